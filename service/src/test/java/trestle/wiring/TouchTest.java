package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trestle.units.Temperature.kFromC;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** A wire against what it touches. */
class TouchTest {
    private static WireTask inFoam(double currentA, Insulation insulation) {
        WireRun run = WireRun.plain("run", currentA, 0.2, 25.2);
        return WireTasks.touching(
                WireTasks.task(run, insulation, WireTasks.in(Enclosure.FOAM_CHANNEL, 25, 2)), ContactMaterial.EPS_FOAM);
    }

    /** Foam was recommended wires of 157 to 204 °C. */
    @ParameterizedTest
    @CsvSource({"40, SILICONE_200", "10, SILICONE_200", "10, PTFE_260", "100, SILICONE_200", "60, PTFE_260"})
    void noGaugeIsRecommendedThatIsHotterThanTheFoamStands(double currentA, Insulation insulation) {
        WireSizing sizing = WireSizing.of(inFoam(currentA, insulation));
        assertThat(sizing.recommended().stream())
                .allSatisfy(answer ->
                        assertThat(answer.surfaceTemperatureK().orElseThrow()).isLessThanOrEqualTo(kFromC(74)));
        assertThat(sizing.recommended().isPresent()
                        || only(sizing, "wire-surface").outcome() == Outcome.STOP)
                .isTrue();
    }

    @Test
    void theFindingSaysWhatHelpsAndEachWayHelps() {
        WireTask task = inFoam(40, Insulation.SILICONE_200);
        Finding finding = finding(WireSizing.of(WireTasks.checking(task, Gauge.awg(10))));
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.code()).isEqualTo("melts-what-it-touches");
        assertThat(finding.subject()).isEqualTo(Subject.of(WiringPart.TOUCHES));
        assertThat(finding.value().orElseThrow()).isCloseTo(156.4, within(0.05));
        assertThat(finding.limit().orElseThrow()).isCloseTo(74, within(1e-9));
        assertThat(finding.message())
                .isEqualTo(
                        "At 40 A AWG 10 is 156 °C at its surface, and polystyrene foam (EPS) stands 74 °C: use AWG 6,"
                                + " or carry no more than 27 A, or leave air all round it (then 65 °C at its surface).");
        assertThat(surfaceC(inFoam(27, Insulation.SILICONE_200), 10)).isBetween(70.0, 74.0);
        assertThat(surfaceC(inFoam(28, Insulation.SILICONE_200), 10)).isGreaterThan(74);
        assertThat(surfaceC(inFoam(40, Insulation.SILICONE_200), 6)).isLessThan(64);
    }

    private static double surfaceC(WireTask task, int awg) {
        return GaugeAnswer.of(task, Gauge.awg(awg)).surfaceTemperatureK().orElseThrow() - 273.15;
    }

    /** Within 10 K it is looked at; a gauge that keeps them is preferred, where there is one. */
    @Test
    void theRecommendedGaugeLeavesTenKelvinWhereOneDoes() {
        WireSizing sizing = WireSizing.of(inFoam(40, Insulation.SILICONE_200));
        assertThat(sizing.recommended().orElseThrow().surfaceTemperatureK().orElseThrow())
                .isLessThan(kFromC(64));
        assertThat(sizing.judgement().findings()).isEmpty();
        WireTask checked = WireTasks.checking(inFoam(26, Insulation.SILICONE_200), Gauge.awg(10));
        assertThat(finding(WireSizing.of(checked)).code()).isEqualTo("warms-what-it-touches");
        assertThat(WireSizing.of(checked).checked().orElseThrow().meets()).isTrue();
    }

    /** Thresholds at 0 and at 10 K under the limit, from both sides. */
    @ParameterizedTest
    @CsvSource({"73.99, 0", "74.01, 1", "63.99, -1", "64.01, 0"})
    void limitsAreHeldFromBothSides(double surfaceC, int grade) {
        WireTask task = inFoam(1, Insulation.SILICONE_200);
        Wire wire = task.wire(Gauge.awg(10));
        double currentA = SteadyState.currentAtSurfaceA(wire, task.path(wire), kFromC(surfaceC));
        WireSizing sizing = WireSizing.of(WireTasks.checking(inFoam(currentA, Insulation.SILICONE_200), Gauge.awg(10)));
        Outcome expected = grade > 0 ? Outcome.STOP : grade == 0 ? Outcome.ATTENTION : Outcome.PASSED;
        assertThat(only(sizing, "wire-surface").outcome()).isEqualTo(expected);
        assertThat(sizing.checked().orElseThrow().fails().contains(Shortfall.SURFACE))
                .isEqualTo(grade > 0);
    }

    /** Solder and plugs are joined to the copper. */
    @Test
    void solderMeetsTheCopperAndFoamTheSurface() {
        Touch solder = Touch.worst(List.of(ContactMaterial.SOLDER_TIN_LEAD), kFromC(90), kFromC(112))
                .orElseThrow();
        assertThat(solder.excessK()).isCloseTo(2, within(1e-9));
        Touch foam = Touch.worst(
                        List.of(ContactMaterial.SOLDER_TIN_LEAD, ContactMaterial.EPS_FOAM), kFromC(90), kFromC(112))
                .orElseThrow();
        assertThat(foam.material()).isEqualTo(ContactMaterial.EPS_FOAM);
        assertThat(foam.excessK()).isCloseTo(16, within(1e-9));
        assertThat(Touch.worst(List.of(ContactMaterial.SKIN), kFromC(90), kFromC(112)))
                .isEmpty();
    }

    /** A peak may pass a limit of years by 20 K. */
    @ParameterizedTest
    @CsvSource({"93.9, PASSED", "94.1, STOP"})
    void aShortPeakMayPassTheLimitByTwentyKelvin(double peakC, Outcome outcome) {
        WireTask cold = inFoam(5, Insulation.SILICONE_200);
        Wire wire = cold.wire(Gauge.awg(10));
        SteadyState from = SteadyState.of(wire, cold.path(wire), 5).orElseThrow();
        double peakA = trestle.numeric.Root.between(
                        a -> PeakRise.end(wire, cold.path(wire), from, a, 20)
                                        .orElseThrow()
                                        .surfaceK()
                                - kFromC(peakC),
                        5,
                        300,
                        1e-6)
                .orElseThrow();
        WireTask task = WireTasks.checking(
                WireTasks.with(cold, WireTasks.peaking(cold.run(), peakA, 20), ContactMaterial.EPS_FOAM),
                Gauge.awg(10));
        assertThat(only(WireSizing.of(task), "wire-surface").outcome()).isEqualTo(outcome);
    }

    /** Cooler than the most delicate thing of the table it may touch anything; hotter, who knows. */
    @Test
    void whatIsTouchedMustBeKnownWhereTheWireIsWarm() {
        WireTask cool = WireTasks.with(WireTasks.packLead(), WireRun.plain("cool", 1, 0.2, 12));
        assertThat(only(WireSizing.of(cool), "wire-surface").outcome()).isEqualTo(Outcome.PASSED);
        Check warm = only(WireSizing.of(WireTasks.packLead()), "wire-surface");
        assertThat(warm.outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(warm.essential()).isTrue();
        assertThat(warm.give()).containsExactly(Subject.of(WiringPart.TOUCHES));
        assertThat(only(WireSizing.of(WireTasks.touching(WireTasks.packLead())), "wire-surface")
                        .outcome())
                .isEqualTo(Outcome.PASSED);
    }

    @Test
    void skinAsksForPatienceAndRulesNoGaugeOut() {
        WireTask task = WireTasks.touching(WireTasks.packLead(), ContactMaterial.SKIN);
        WireSizing sizing = WireSizing.of(task);
        assertThat(sizing.recommended())
                .isEqualTo(WireSizing.of(WireTasks.packLead()).recommended());
        Finding finding = finding(sizing);
        assertThat(finding.code()).isEqualTo("too-hot-to-touch");
        assertThat(finding.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(finding.message()).matches(".*wait [1-9] min after landing\\.");
        WireTask desert = WireTasks.with(task, task.run(), WireTasks.in(Enclosure.FREE_AIR, 55, 1));
        assertThat(finding(WireSizing.of(desert)).message()).endsWith("too warm for it to cool that far.");
    }

    /** Newton's law by hand: a thin wall, so one lump, and heat given off nearly in proportion. */
    @Test
    void coolingTakesAboutAsLongAsOneLumpDoes() {
        WireTask task = inFoam(40, Insulation.ETFE_150);
        Wire wire = task.wire(Gauge.awg(10));
        HeatPath path = task.path(wire);
        SteadyState from = new SteadyState(kFromC(90), kFromC(90));
        double conductance = path.heatWPerM(kFromC(70)) / 45;
        double capacity = wire.copperCapacityJPerMK() + wire.insulationCapacityJPerMK();
        double byHandS = capacity / conductance * Math.log((90.0 - 25) / (51 - 25));
        assertThat(Cooling.timeS(wire, path, from, kFromC(51)).orElseThrow()).isCloseTo(byHandS, within(0.1 * byHandS));
        assertThat(Cooling.timeS(wire, path, from, kFromC(20))).isEqualTo(OptionalDouble.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"wire-temperature", "wire-surface", "wire-drop", "wire-drop-peak", "connector-current"})
    void whatFitNeedsIsEssential(String code) {
        assertThat(only(WireSizing.of(WireTasks.packLead()), code).essential()).isTrue();
    }

    /** The same checks in the same order whatever is left out. */
    @Test
    void theListOfChecksIsAlwaysTheSame() {
        List<String> codes = codes(WireTasks.packLead());
        WireTask all = WireTasks.checking(inFoam(60, Insulation.SILICONE_200), Gauge.awg(16));
        WireTask peaking = WireTasks.with(
                all, WireTasks.peaking(all.run(), 600, 5), ContactMaterial.SKIN, ContactMaterial.POLYAMIDE);
        assertThat(codes(all)).isEqualTo(codes);
        assertThat(codes(peaking)).isEqualTo(codes);
        assertThat(codes)
                .containsExactly(
                        "wire-temperature",
                        "wire-peak",
                        "wire-surface",
                        "wire-skin",
                        "wire-drop",
                        "wire-drop-peak",
                        "connector-current",
                        "lead-length",
                        "current-plausible",
                        "length-plausible");
    }

    @Test
    void everyMaterialHasALimitAboveASummersDay() {
        assertThat(Arrays.stream(ContactMaterial.values()).mapToDouble(ContactMaterial::limitK))
                .allMatch(k -> k >= kFromC(45) && k <= kFromC(125));
    }

    private static List<String> codes(WireTask task) {
        return WireSizing.of(task).judgement().checks().stream()
                .map(Check::code)
                .toList();
    }

    private static Check only(WireSizing sizing, String code) {
        List<Check> found = sizing.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static Finding finding(WireSizing sizing) {
        assertThat(sizing.judgement().findings()).hasSize(1);
        return sizing.judgement().findings().get(0);
    }
}
