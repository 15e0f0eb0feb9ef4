package trestle.wiring;

import java.util.List;
import java.util.stream.IntStream;

/** The conductor sizes of the trade. */
public final class WireGauges {
    private static final int THICKEST_OFFERED = 2;
    private static final int THINNEST_OFFERED = 30;
    private static final double THICKEST_OFFERED_MM2 = 35;

    /** Even gauges 30 to 2. */
    private static final List<Gauge> OFFERED_AWG = IntStream.iterate(
                    THINNEST_OFFERED, n -> n >= THICKEST_OFFERED, n -> n - 2)
            .mapToObj(Gauge::awg)
            .toList();

    /** 0.14 to 35 mm². */
    private static final List<Gauge> OFFERED_METRIC = MetricConductors.areasMm2().stream()
            .filter(area -> area <= THICKEST_OFFERED_MM2)
            .map(Gauge::metric)
            .toList();

    private WireGauges() {}

    /**
     * The sizes that a builder can buy and that a choice is made from, thinnest first.
     *
     * @param system American: even gauges 30 to 2; metric: 0.14 to 35 mm²
     * @return the sizes
     */
    public static List<Gauge> offered(GaugeSystem system) {
        return system == GaugeSystem.AWG ? OFFERED_AWG : OFFERED_METRIC;
    }

    /**
     * All sizes that can be checked, thinnest first, as reference rows.
     *
     * @param system American: 40 to 0000; metric: 0.14 to 50 mm²
     * @return the rows
     */
    public static List<GaugeRow> rows(GaugeSystem system) {
        return system == GaugeSystem.AWG
                ? IntStream.iterate(Awg.THINNEST_NUMBER, n -> n >= Awg.THICKEST_NUMBER, n -> n - 1)
                        .mapToObj(Gauge::awg)
                        .map(GaugeRow::of)
                        .toList()
                : MetricConductors.areasMm2().stream()
                        .map(Gauge::metric)
                        .map(GaugeRow::of)
                        .toList();
    }
}
