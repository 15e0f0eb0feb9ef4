package trestle.joint;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.battery.Covering;
import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.Segment;
import trestle.battery.Surroundings;
import trestle.telemetry.FlownPack;
import trestle.telemetry.RestCurve;
import trestle.telemetry.RestPoint;

/** A pack as a review of a flight sees it: its rest voltage over the charge that is out of it. */
public final class RestVoltage {
    private static final int STEPS = 100;

    /** At rest the temperature hardly matters: 20 °C. */
    private static final Surroundings ROOM = Surroundings.of(293.15, Covering.BARE);

    private RestVoltage() {}

    /**
     * The curve, from full until the smallest segment is empty.
     *
     * @param pack the pack, at the charge that it began the flight with
     * @return what a review wants to know of it
     */
    public static FlownPack of(Pack pack) {
        double capacityC = pack.capacityC();
        List<RestPoint> points = IntStream.rangeClosed(0, STEPS)
                .mapToDouble(i -> capacityC * i / STEPS)
                .mapToObj(usedC -> new RestPoint(
                        usedC, PackState.of(used(pack, usedC), ROOM).restVoltageV()))
                .toList();
        int series = pack.seriesCount();
        double startUsedC = pack.segments().stream()
                .mapToDouble(it -> (1 - it.stateOfChargeFraction()) * capacityC(it))
                .max()
                .orElse(0);
        return new FlownPack(
                new RestCurve(points, startUsedC, series),
                pack.segments().stream()
                                .mapToDouble(it -> it.seriesCount() * it.cell().minimumVoltageV())
                                .sum()
                        / series,
                pack.segments().stream()
                                .mapToDouble(it -> it.seriesCount() * it.cell().overDischargeV())
                                .sum()
                        / series);
    }

    private static double capacityC(Segment segment) {
        return segment.parallelCount() * segment.cell().capacityC() * segment.healthFraction();
    }

    private static Pack used(Pack pack, double usedC) {
        return new Pack(pack.segments().stream().map(it -> used(it, usedC)).toList(), pack.leadResistanceOhm());
    }

    private static Segment used(Segment it, double usedC) {
        double left = Math.max(0, Math.min(1, 1 - usedC / capacityC(it)));
        return new Segment(
                it.name(),
                it.seriesCount(),
                it.parallelCount(),
                it.cell(),
                it.healthFraction(),
                left,
                OptionalDouble.empty());
    }
}
