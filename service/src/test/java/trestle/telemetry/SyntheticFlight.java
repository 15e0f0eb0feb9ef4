package trestle.telemetry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Makes the log of a flight whose truth is known: ten rows a second round a square in wind, each side at another
 * airspeed, bursts of load, noise of 2 % on current and airspeed, 0.1 % on voltage, 0.3 m on height.
 */
final class SyntheticFlight {
    static final double SYSTEMS_W = 14;
    static final double PARASITE_M2 = 0.0218;
    static final double INDUCED_PER_S4 = 18.1;
    static final double MASS_KG = 6.6;
    static final double DENSITY = 1.2;
    static final double RESISTANCE_OHM = 0.055;
    static final double OPEN_CIRCUIT_V = 25;
    static final double WIND_FROM_DEG = 240;
    static final double WIND_M_PER_S = 6;
    static final double LATITUDE_RAD = Math.toRadians(50);
    static final double M_PER_RAD = 6.371e6;

    double noise = 1;
    double stepS = 0.1;
    double lengthS = 1800;
    double[] airspeeds = {13, 15, 17, 19, 21, 14, 16, 18};
    double turnsEveryS = 45;
    double gapFromS = Double.NaN;
    double gapToS = Double.NaN;
    double trueEnergyJ;

    static double powerW(double v) {
        return SYSTEMS_W + PARASITE_M2 * DENSITY * v * v * v + INDUCED_PER_S4 * MASS_KG * MASS_KG / (DENSITY * v);
    }

    Telemetry made(Channel... without) {
        Random random = new Random(7);
        int count = (int) (lengthS / stepS);
        List<double[]> rows = new ArrayList<>();
        double from = Math.toRadians(WIND_FROM_DEG);
        double windN = -WIND_M_PER_S * Math.cos(from);
        double windE = -WIND_M_PER_S * Math.sin(from);
        double heading = 0.3;
        double v = airspeeds[0];
        double north = 0;
        double east = 0;
        for (int i = 0; i < count; i++) {
            double t = i * stepS;
            int side = (int) (t / turnsEveryS);
            boolean turning = turnsEveryS < lengthS && t % turnsEveryS < 9 && side > 0;
            heading += turning ? Math.toRadians(10) * stepS : 0;
            double aim = airspeeds[side % airspeeds.length];
            v += Math.max(-0.8 * stepS, Math.min(0.8 * stepS, aim - v));
            double vn = v * Math.cos(heading) + windN;
            double ve = v * Math.sin(heading) + windE;
            north += vn * stepS;
            east += ve * stepS;
            boolean burst = turning && t % 3 < 1;
            double power = powerW(v) + (burst ? 400 : 0);
            double current = current(power);
            double voltage = OPEN_CIRCUIT_V - RESISTANCE_OHM * current;
            trueEnergyJ += power * stepS;
            if (t > gapFromS && t < gapToS) {
                continue;
            }
            rows.add(new double[] {
                t,
                voltage * (1 + noise * 0.001 * random.nextGaussian()),
                current * (1 + noise * 0.02 * random.nextGaussian()),
                v * (1 + noise * 0.02 * random.nextGaussian()),
                100 + noise * 0.3 * random.nextGaussian(),
                vn + noise * 0.2 * random.nextGaussian(),
                ve + noise * 0.2 * random.nextGaussian(),
                LATITUDE_RAD + north / M_PER_RAD,
                0.1 + east / M_PER_RAD / Math.cos(LATITUDE_RAD)
            });
        }
        Channel[] order = {
            Channel.VOLTAGE,
            Channel.CURRENT,
            Channel.AIRSPEED,
            Channel.ALTITUDE,
            Channel.VELOCITY_NORTH,
            Channel.VELOCITY_EAST,
            Channel.LATITUDE,
            Channel.LONGITUDE
        };
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        for (int c = 0; c < order.length; c++) {
            int column = c + 1;
            columns.put(order[c], rows.stream().mapToDouble(r -> r[column]).toArray());
        }
        Arrays.asList(without).forEach(columns::remove);
        return Telemetry.of(rows.stream().mapToDouble(r -> r[0]).toArray(), columns);
    }

    private static double current(double power) {
        double root = Math.sqrt(OPEN_CIRCUIT_V * OPEN_CIRCUIT_V - 4 * RESISTANCE_OHM * power);
        return (OPEN_CIRCUIT_V - root) / (2 * RESISTANCE_OHM);
    }
}
