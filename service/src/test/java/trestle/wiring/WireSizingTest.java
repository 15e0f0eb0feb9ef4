package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Assumption;
import trestle.finding.Finding;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Temperature;

/** The choice, its findings, its limits. */
class WireSizingTest {
    @Test
    void packLeadOf60AmperesIsTheThinnestThatStaysCoolAndKeepsTheDrop() {
        WireSizing sizing = WireSizing.of(WireTasks.packLead());
        assertThat(sizing.recommended()).isEqualTo(sizing.lightest());
        GaugeAnswer answer = sizing.recommended().orElseThrow();
        assertThat(answer.gauge().designation()).isEqualTo("12");
        // By hand: 5.315 mΩ/m × 1.2 m at 20 °C, 1 + 0.00393 (T − 20) for the temperature.
        double warm = 1 + 0.00393 * (answer.conductorTemperatureK().orElseThrow() - 293.15);
        assertThat(answer.resistanceOhm()).isCloseTo(5.315e-3 * 1.2 * warm, within(2e-5));
        assertThat(answer.dropV()).isCloseTo(60 * answer.resistanceOhm(), within(1e-12));
        assertThat(answer.lossW()).isCloseTo(3600 * answer.resistanceOhm(), within(1e-9));
        assertThat(sizing.judgement().findings()).isEmpty();
        assertThat(sizing.enduranceOptimal()).isEmpty();
        assertThat(answer.energyCostJ()).isEmpty();
    }

    @Test
    void massIsCopperAndInsulationBothWays() {
        GaugeAnswer answer = GaugeAnswer.of(WireTasks.packLead(), Gauge.awg(10));
        double copperKg = 5.2612e-6 * 8890 * 1.2;
        double d = answer.gauge().conductorDiameterM();
        double siliconeKg = Math.PI / 4 * ((d + 2.4e-3) * (d + 2.4e-3) - d * d) * 1200 * 1.2;
        assertThat(answer.massKg()).isCloseTo(copperKg + siliconeKg, within(1e-6));
    }

    /** {@code (I² R + 1.5 p m) t} by hand, and the best gauge between thin (loss) and thick. */
    @Test
    void enduranceOptimalGaugeWeighsLossAgainstMass() {
        Flight flight = new Flight(7200, 60);
        WireSizing sizing = WireSizing.of(WireTasks.flying(WireTasks.packLead(), flight));
        GaugeAnswer best = sizing.recommended().orElseThrow();
        assertThat(best.energyCostJ().orElseThrow())
                .isCloseTo((best.lossW() + 1.5 * 60 * best.massKg()) * 7200, within(1e-6));
        assertThat(sizing.recommended()).isEqualTo(sizing.enduranceOptimal());
        assertThat(best.gauge().areaM2())
                .isGreaterThan(sizing.lightest().orElseThrow().gauge().areaM2());
        assertThat(best.gauge())
                .isNotEqualTo(WireGauges.offered(GaugeSystem.AWG).get(14));
    }

    /**
     * Without insulation and at one temperature the optimum has a closed form: {@code I² ρ / A =
     * 1.5 p δ A}, so {@code A = I sqrt(ρ / (1.5 p δ))}; 60 A, 60 W/kg, 60 °C: 9.4 mm². The gauge
     * chosen is a neighbour of it, thinner for the insulation's mass.
     */
    @Test
    void enduranceOptimumIsNearTheClosedForm() {
        double resistivity = 1.02 / 58e6 * (1 + 0.00393 * 40);
        double areaM2 = 60 * Math.sqrt(resistivity / (1.5 * 60 * 8890));
        WireSizing sizing = WireSizing.of(WireTasks.flying(WireTasks.packLead(), new Flight(7200, 60)));
        double chosenM2 = sizing.recommended().orElseThrow().gauge().areaM2();
        assertThat(areaM2 / chosenM2).isBetween(1 / 1.6, 1.6);
    }

    @Test
    void aPowerThatGoesWithMassToThe15CostsOneAndAHalfTimesTheMean() {
        double p = 300 * Math.pow(5.001 / 5, 1.5) - 300 * Math.pow(4.999 / 5, 1.5);
        assertThat(new Flight(1, 60).powerPerMassWPerKg()).isCloseTo(p / 0.002, within(1e-4));
    }

    @Test
    void foamChannelIsHotterThanBayIsHotterThanFreeAir() {
        double free = conductorK(Enclosure.FREE_AIR);
        double bay = conductorK(Enclosure.STILL_BAY);
        double foam = conductorK(Enclosure.FOAM_CHANNEL);
        assertThat(bay).isGreaterThan(free + 5);
        assertThat(foam).isGreaterThan(bay + 5);
    }

    private static double conductorK(Enclosure enclosure) {
        WireTask task = WireTasks.with(WireTasks.packLead(), WireTasks.in(enclosure, 25, 1));
        return GaugeAnswer.of(task, Gauge.awg(8)).conductorTemperatureK().orElseThrow();
    }

    /** By hand: no convection, so the balance is linear and has a closed form. */
    @Test
    void foamChannelFollowsTheClosedForm() {
        WireTask task = WireTasks.with(WireTasks.packLead(), WireTasks.in(Enclosure.FOAM_CHANNEL, 20, 1));
        Wire wire = task.wire(Gauge.awg(8));
        double outer = wire.outerDiameterM();
        double thermal = Math.log(1 + 0.04 / outer) / (2 * Math.PI * 0.035)
                + Math.log(outer / wire.gauge().conductorDiameterM()) / (2 * Math.PI * 0.2);
        double heat20 = 3600 * wire.gauge().resistancePerMOhm();
        double riseK = heat20 * thermal / (1 - 0.00393 * heat20 * thermal);
        assertThat(GaugeAnswer.of(task, Gauge.awg(8)).conductorTemperatureK().orElseThrow())
                .isCloseTo(293.15 + riseK, within(1e-4));
    }

    /** Resistance rises with temperature, cooling through foam only in proportion: no balance. */
    @Test
    void runawayInFoamIsAResult() {
        WireTask task = WireTasks.checking(
                WireTasks.with(WireTasks.packLead(), WireTasks.in(Enclosure.FOAM_CHANNEL, 25, 2)), Gauge.awg(16));
        WireSizing sizing = WireSizing.of(task);
        GaugeAnswer checked = sizing.checked().orElseThrow();
        assertThat(checked.conductorTemperatureK()).isEmpty();
        assertThat(checked.fails()).contains(Shortfall.RUNAWAY);
        assertThat(codes(sizing)).contains("wire-runaway");
    }

    @Test
    void whereNoGaugeMeetsTheFindingSaysWhichLimitAndWhatHelps() {
        WireRun longRun = WireRun.plain("long", 60, 20, 12);
        WireSizing sizing = WireSizing.of(WireTasks.with(WireTasks.packLead(), longRun));
        assertThat(sizing.recommended()).isEmpty();
        assertThat(sizing.totalDropV()).isEmpty();
        Finding finding = sizing.judgement().findings().get(0);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.code()).isEqualTo("no-gauge-keeps-the-drop");
        assertThat(finding.subject()).isEqualTo(Subject.of(WiringPart.MAX_DROP));
        assertThat(finding.limit().orElseThrow()).isCloseTo(3, within(1e-9));
        assertThat(finding.message())
                .startsWith("Even the largest size, AWG 2, drops 1.31 V at 60 A, connectors included:")
                .contains("% of 12 V, over the limit of 3.0 % (common practice);")
                .contains("higher supply voltage");
    }

    @Test
    void whereNoGaugeStaysCoolTheFindingSaysSo() {
        WireRun heavy = WireRun.plain("heavy", 450, 0.1, 400);
        assertThat(codes(WireSizing.of(WireTasks.with(WireTasks.packLead(), heavy))))
                .containsExactly("no-gauge-stays-cool", "current-implausible");
        WireTask hotBay = WireTasks.task(WireRun.plain("bay", 1, 0.1, 12), Insulation.PVC_80, WireTasks.freeAir(90));
        assertThat(codes(WireSizing.of(hotBay))).containsExactly("no-gauge-stays-cool");
        assertThat(WireSizing.of(hotBay).candidates()).allMatch(a -> a.ampacityA() == 0);
    }

    @Test
    void peakRulesOutAGaugeThatStaysCoolOtherwise() {
        WireRun run = WireTasks.peaking(WireRun.plain("burst", 20, 0.3, 44.4), 150, 30);
        WireSizing sizing = WireSizing.of(WireTasks.with(WireTasks.packLead(), run));
        GaugeAnswer thin = sizing.candidates().stream()
                .filter(a -> a.gauge().designation().equals("14"))
                .findFirst()
                .orElseThrow();
        assertThat(thin.fails()).containsExactly(Shortfall.PEAK, Shortfall.PEAK_DROP);
        GaugeAnswer chosen = sizing.recommended().orElseThrow();
        assertThat(chosen.peakTemperatureK().orElseThrow())
                .isGreaterThan(chosen.conductorTemperatureK().orElseThrow())
                .isLessThanOrEqualTo(Temperature.kFromC(200));
    }

    @Test
    void gaugeThatMeltsInThePeakSaysSo() {
        WireRun run = WireTasks.peaking(WireRun.plain("burst", 2, 0.05, 44.4), 900, 5);
        WireTask task = WireTasks.checking(WireTasks.with(WireTasks.packLead(), run), Gauge.awg(20));
        WireSizing sizing = WireSizing.of(task);
        assertThat(sizing.checked().orElseThrow().meltsInPeak()).isTrue();
        assertThat(sizing.judgement().findings())
                .anyMatch(f -> f.message().startsWith("AWG 20 melts, at 1085 °C, in the peak of 900 A for 5 s;"));
    }

    @Test
    void connectorsAddDropAndLossAndAreHeldToTheirRating() {
        WireRun plain = WireRun.plain("c", 60, 0.3, 44.4);
        WireRun run = WireTasks.connected(plain, new Connector("main", 0.5e-3, 70, 2));
        WireSizing sizing = WireSizing.of(WireTasks.with(WireTasks.packLead(), run));
        // Two connectors, each passed twice: 4 × 0.5 mΩ.
        assertThat(sizing.connectorDropV()).isCloseTo(60 * 2e-3, within(1e-12));
        assertThat(sizing.connectorLossW()).isCloseTo(3600 * 2e-3, within(1e-12));
        GaugeAnswer answer = sizing.recommended().orElseThrow();
        assertThat(sizing.totalDropV().orElseThrow()).isCloseTo(answer.dropV() + 0.12, within(1e-12));
        assertThat(sizing.judgement().findings()).extracting(Finding::code).contains("connector-near-rating");
    }

    @Test
    void overloadedConnectorStopsEveryGauge() {
        WireRun run = WireTasks.connected(
                WireRun.plain("c", 60, 0.3, 44.4),
                new Connector("good", 0.3e-3, 90, 1),
                new Connector("small", 1e-3, 30, 1));
        WireSizing sizing = WireSizing.of(WireTasks.with(WireTasks.packLead(), run));
        assertThat(sizing.recommended()).isEmpty();
        assertThat(codes(sizing)).containsExactly("connector-overloaded");
        assertThat(sizing.judgement().findings().get(0).subject()).isEqualTo(Subject.of(WiringPart.CONNECTOR, 1));
    }

    @Test
    void connectorRatingCountsAt80AndAt100Percent() {
        assertThat(runFindings(withConnector(47.9, 60))).isEmpty();
        assertThat(runFindings(withConnector(48.1, 60)))
                .extracting(Finding::severity)
                .containsExactly(Severity.ATTENTION);
        assertThat(runFindings(withConnector(60, 60)))
                .extracting(Finding::severity)
                .containsExactly(Severity.ATTENTION);
        assertThat(runFindings(withConnector(60.1, 60)))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(runFindings(WireTasks.peaking(withConnector(20, 60), 80, 1)))
                .extracting(Finding::code)
                .containsExactly("connector-peak-above-rating");
    }

    private static List<Finding> runFindings(WireRun run) {
        Judge judge = new Judge();
        RunChecks.judge(run, judge);
        return judge.judgement().findings();
    }

    private static WireRun withConnector(double currentA, double ratedA) {
        return WireTasks.connected(WireRun.plain("c", currentA, 0.1, 20), new Connector("c", 1e-3, ratedA, 1));
    }

    @Test
    void longLeadToTheControllerAsksForCapacitors() {
        WireRun lead = new WireRun("esc", 40, 0.5, 22.2, Optional.empty(), 1, List.of(), true, true);
        Finding finding = runFindings(lead).get(0);
        assertThat(finding.code()).isEqualTo("long-supply-lead");
        assertThat(finding.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(finding.message()).contains("500 mm").contains("0.35 µH").contains("low-ESR");
        assertThat(runFindings(WireRun.plain("servo", 2, 1.5, 6))).isEmpty();
    }

    @Test
    void checkedGaugeIsJudgedWhateverItsSize() {
        for (String name : List.of("0000", "4/0", "7", "40")) {
            WireTask task = WireTasks.checking(WireTasks.packLead(), Gauge.parse(GaugeSystem.AWG, name));
            assertThat(WireSizing.of(task).checked()).isPresent();
        }
    }

    @Test
    void checkedGaugeThatIsTooThinIsAStopAndTheDropAnAttention() {
        WireSizing sizing = WireSizing.of(WireTasks.checking(WireTasks.packLead(), Gauge.awg(16)));
        assertThat(sizing.judgement().findings())
                .anyMatch(f -> f.code().equals("wire-too-hot") && f.severity() == Severity.STOP)
                .anyMatch(f -> f.code().equals("drop-above-limit") && f.severity() == Severity.ATTENTION);
        assertThat(sizing.recommended().orElseThrow().gauge()).isNotEqualTo(Gauge.awg(16));
    }

    @Test
    void checkedGaugeWithinTheMarginIsAnAttention() {
        Wire wire = Wire.usual(Gauge.awg(10), Insulation.SILICONE_200);
        HeatPath path = new HeatPath(wire, WireTasks.freeAir(25));
        double currentA = SteadyState.currentA(wire, path, Temperature.kFromC(195));
        WireTask task = WireTasks.checking(
                WireTasks.with(WireTasks.packLead(), WireRun.plain("r", currentA, 0.1, 50)), Gauge.awg(10));
        assertThat(codes(WireSizing.of(task))).containsExactly("wire-hot");
    }

    @Test
    void checkedGaugeThatWouldDropTheWholeSupplyIsAStop() {
        WireTask task =
                WireTasks.checking(WireTasks.with(WireTasks.packLead(), WireRun.plain("r", 3, 10, 5)), Gauge.awg(28));
        assertThat(codes(WireSizing.of(task))).contains("drop-above-supply");
    }

    @Test
    void heavierCheckedGaugeIsTheBuildersOwnChoice() {
        WireSizing sizing = WireSizing.of(WireTasks.checking(WireTasks.packLead(), Gauge.awg(4)));
        assertThat(codes(sizing)).isEmpty();
        assertThat(sizing.totalDropV().orElseThrow())
                .isEqualTo(sizing.checked().orElseThrow().totalDropV());
    }

    @Test
    void twoParallelWiresHalveTheResistanceAndLieTogether() {
        WireTask one = WireTasks.packLead();
        WireTask two = WireTasks.with(one, WireTasks.parallel(one.run(), 2));
        GaugeAnswer single = GaugeAnswer.of(one, Gauge.awg(10));
        GaugeAnswer twin = GaugeAnswer.of(two, Gauge.awg(10));
        assertThat(twin.massKg()).isCloseTo(2 * single.massKg(), within(1e-12));
        assertThat(twin.resistanceOhm()).isLessThan(single.resistanceOhm() / 2);
        assertThat(twin.ampacityA()).isBetween(single.ampacityA(), 2 * single.ampacityA());
        assertThat(two.effectiveSurroundings().bundledConductors()).isEqualTo(2);
        assertThat(WireSizing.of(two).judgement().assumptions())
                .extracting(Assumption::subject)
                .contains(Subject.of(WiringPart.PARALLEL_WIRES));
    }

    @Test
    void defaultsThatTouchedANumberAreStated() {
        WireTask task = WireTasks.with(WireTasks.packLead(), WireTasks.in(Enclosure.STILL_BAY, 30, 3));
        assertThat(WireSizing.of(task).judgement().assumptions())
                .extracting(a -> a.subject().part().name())
                .containsExactly("GAUGE_SYSTEM", "INSULATION_THICKNESS", "AMBIENT", "BUNDLED_CONDUCTORS");
        assertThat(WireSizing.of(task).judgement().assumptions().get(2).assumed())
                .contains("40.0 °C");
    }

    @Test
    void bayTemperatureThatIsGivenIsUsed() {
        Surroundings bay = new Surroundings(Enclosure.STILL_BAY, 293.15, OptionalDouble.of(333.15), 0, 1, 0.02);
        assertThat(bay.sinkTemperatureK()).isEqualTo(333.15);
        assertThat(WireTasks.in(Enclosure.STILL_BAY, 20, 1).sinkTemperatureK()).isCloseTo(303.15, within(1e-9));
    }

    @Test
    void withoutCurrentTheWireIsAsWarmAsTheAir() {
        WireTask task = WireTasks.with(WireTasks.packLead(), WireRun.plain("idle", 0, 1, 5));
        GaugeAnswer answer = WireSizing.of(task).recommended().orElseThrow();
        assertThat(answer.gauge().designation()).isEqualTo("30");
        assertThat(answer.conductorTemperatureK().orElseThrow()).isCloseTo(298.15, within(1e-9));
    }

    private static List<String> codes(WireSizing sizing) {
        return sizing.judgement().findings().stream().map(Finding::code).toList();
    }
}
