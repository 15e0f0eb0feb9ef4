package trestle.endpoint.flightreview;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import trestle.api.model.ApiFlightReviewRequest;
import trestle.api.model.ApiLogWindow;
import trestle.api.model.ApiTelemetry;
import trestle.endpoint.Reading;
import trestle.telemetry.Channel;
import trestle.telemetry.FlightLog;
import trestle.telemetry.Telemetry;
import trestle.units.Angle;
import trestle.units.Charge;

/** Reads the columns of a log. */
final class TelemetryReading {
    /** Names of the columns in the contract. */
    static final Map<Channel, String> FIELDS = fields();

    private static final String AT = ApiFlightReviewRequest.TELEMETRY.at("");

    private final ApiTelemetry log;
    private final Reading reading;
    private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    private final int count;
    private int[] window;
    private boolean whole = true;

    private TelemetryReading(ApiTelemetry log, Reading reading) {
        this.log = log;
        this.reading = reading;
        this.count = log.timeS().size();
    }

    /** The rows inside the window; empty where a contradiction was noted. */
    static Optional<Telemetry> of(ApiTelemetry log, ApiLogWindow window, Reading reading) {
        return new TelemetryReading(log, reading).read(window);
    }

    private Optional<Telemetry> read(ApiLogWindow bounds) {
        double from = bounds == null ? Double.NEGATIVE_INFINITY : Reading.or(bounds.fromS(), Double.NEGATIVE_INFINITY);
        double to = bounds == null ? Double.POSITIVE_INFINITY : Reading.or(bounds.toS(), Double.POSITIVE_INFINITY);
        window = java.util.stream.IntStream.range(0, count)
                .filter(i -> log.timeS().get(i) >= from && log.timeS().get(i) <= to)
                .toArray();
        DoubleUnaryOperator same = x -> x;
        column(Channel.VOLTAGE, log.voltageV(), same);
        column(Channel.CURRENT, log.currentA(), same);
        column(Channel.CHARGE_COUNTER, log.chargeCounterAh(), Charge::cFromAh);
        column(Channel.AIRSPEED, log.airspeedMPerS(), same);
        column(Channel.GROUND_SPEED, log.groundSpeedMPerS(), same);
        column(Channel.ALTITUDE, log.altitudeM(), same);
        column(Channel.LATITUDE, log.latitudeDeg(), Angle::radFromDeg);
        column(Channel.LONGITUDE, log.longitudeDeg(), Angle::radFromDeg);
        column(Channel.TRACK, log.trackDeg(), Angle::radFromDeg);
        column(Channel.VELOCITY_NORTH, log.velocityNorthMPerS(), same);
        column(Channel.VELOCITY_EAST, log.velocityEastMPerS(), same);
        if (!whole) {
            return Optional.empty();
        }
        Telemetry rows = Telemetry.of(picked(log.timeS(), same), columns);
        if (rows.count() < 2 || !FlightLog.isReadable(rows)) {
            reading.fault(
                    ApiTelemetry.TIME_S.at(AT),
                    "contradiction",
                    "no two rows" + (bounds == null ? "" : " inside the window") + " follow each other in time");
            return Optional.empty();
        }
        return Optional.of(rows);
    }

    private void column(Channel channel, List<Double> values, DoubleUnaryOperator conversion) {
        if (values == null || values.isEmpty()) {
            return;
        }
        if (values.size() != count) {
            reading.fault(
                    AT + "/" + FIELDS.get(channel),
                    "contradiction",
                    FIELDS.get(channel) + " has " + values.size() + " rows and time_s has " + count);
            whole = false;
            return;
        }
        columns.put(channel, picked(values, conversion));
    }

    private double[] picked(List<Double> values, DoubleUnaryOperator conversion) {
        double[] picked = new double[window.length];
        java.util.Arrays.setAll(picked, i -> conversion.applyAsDouble(values.get(window[i])));
        return picked;
    }

    private static Map<Channel, String> fields() {
        Map<Channel, String> fields = new EnumMap<>(Channel.class);
        fields.put(Channel.VOLTAGE, ApiTelemetry.VOLTAGE_V.name());
        fields.put(Channel.CURRENT, ApiTelemetry.CURRENT_A.name());
        fields.put(Channel.CHARGE_COUNTER, ApiTelemetry.CHARGE_COUNTER_AH.name());
        fields.put(Channel.AIRSPEED, ApiTelemetry.AIRSPEED_M_PER_S.name());
        fields.put(Channel.GROUND_SPEED, ApiTelemetry.GROUND_SPEED_M_PER_S.name());
        fields.put(Channel.ALTITUDE, ApiTelemetry.ALTITUDE_M.name());
        fields.put(Channel.LATITUDE, ApiTelemetry.LATITUDE_DEG.name());
        fields.put(Channel.LONGITUDE, ApiTelemetry.LONGITUDE_DEG.name());
        fields.put(Channel.TRACK, ApiTelemetry.TRACK_DEG.name());
        fields.put(Channel.VELOCITY_NORTH, ApiTelemetry.VELOCITY_NORTH_M_PER_S.name());
        fields.put(Channel.VELOCITY_EAST, ApiTelemetry.VELOCITY_EAST_M_PER_S.name());
        return fields;
    }
}
