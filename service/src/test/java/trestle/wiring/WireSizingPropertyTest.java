package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import trestle.finding.Severity;
import trestle.units.Temperature;

/** What must hold for any run. */
class WireSizingPropertyTest {
    /** The root is found to a millionth of a kelvin. */
    private static final double SLACK = 1e-5;

    @Provide
    Arbitrary<WireTask> tasks() {
        Arbitrary<WireRun> runs = Combinators.combine(
                        currentsA(),
                        Arbitraries.doubles().between(0.02, 4),
                        Arbitraries.doubles().between(3, 100),
                        Arbitraries.doubles().between(1, 8).injectNull(0.3),
                        Arbitraries.doubles().between(0.05, 600),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.of(ConnectorRow.rows()).list().ofMaxSize(2))
                .as(WireSizingPropertyTest::run);
        Arbitrary<Surroundings> places = Combinators.combine(
                        Arbitraries.of(Enclosure.class),
                        Arbitraries.doubles().between(-60, 120),
                        Arbitraries.doubles().between(-500, 12_000),
                        Arbitraries.integers().between(1, 12))
                .as((enclosure, ambientC, altitudeM, bundled) -> new Surroundings(
                        enclosure, Temperature.kFromC(ambientC), OptionalDouble.empty(), altitudeM, bundled, 0.02));
        Arbitrary<Flight> flights = Combinators.combine(
                        Arbitraries.doubles().between(60, 20_000),
                        Arbitraries.doubles().between(10, 300))
                .as(Flight::new);
        return Combinators.combine(
                        runs,
                        places,
                        Arbitraries.of(Insulation.class),
                        Arbitraries.of(GaugeSystem.class),
                        Arbitraries.doubles().between(0.002, 0.2).ofScale(4),
                        flights.optional(),
                        Arbitraries.of(ContactMaterial.class)
                                .list()
                                .ofMaxSize(2)
                                .optional())
                .as((run, place, insulation, system, maxDrop, flight, touches) -> new WireTask(
                        run,
                        insulation,
                        OptionalDouble.empty(),
                        place,
                        DropLimits.of(OptionalDouble.of(maxDrop), OptionalDouble.empty()),
                        touches,
                        system,
                        Optional.empty(),
                        flight));
    }

    /** From microamperes to a thousand amperes, as many of each size. */
    private static Arbitrary<Double> currentsA() {
        return Arbitraries.doubles().between(-5, 3).map(exponent -> Math.pow(10, exponent));
    }

    private static WireRun run(
            double currentA,
            double lengthM,
            double supplyV,
            Double peakRatio,
            double peakS,
            int wires,
            List<ConnectorRow> connectors) {
        return new WireRun(
                "run",
                currentA,
                lengthM,
                supplyV,
                Optional.ofNullable(peakRatio).map(r -> new CurrentPeak(r * currentA, peakS)),
                wires,
                connectors.stream()
                        .map(c -> new Connector("c", c.contactResistanceOhm(), c.ratedCurrentA(), 1))
                        .toList(),
                true,
                true);
    }

    @Property(tries = 200)
    void everyNumberIsFiniteAndEveryRunawayIsSaid(@ForAll("tasks") WireTask task) {
        for (GaugeAnswer answer : WireSizing.of(task).candidates()) {
            assertThat(Stream.of(
                            answer.resistanceOhm(),
                            answer.dropV(),
                            answer.totalDropFraction(),
                            answer.lossW(),
                            answer.ampacityA(),
                            answer.massKg(),
                            answer.energyCostJ().orElse(0),
                            answer.conductorTemperatureK().orElse(0),
                            answer.peakTemperatureK().orElse(0)))
                    .allSatisfy(value -> assertThat(value).isFinite().isNotNegative());
            assertThat(answer.conductorTemperatureK().isEmpty())
                    .isEqualTo(answer.fails().contains(Shortfall.RUNAWAY));
            if (task.run().peak().isPresent() && answer.peakTemperatureK().isEmpty()) {
                assertThat(answer.fails()).containsAnyOf(Shortfall.PEAK, Shortfall.RUNAWAY);
            }
        }
    }

    @Property(tries = 200)
    void recommendationMeetsEveryLimitOrAStopSaysWhyThereIsNone(@ForAll("tasks") WireTask task) {
        WireSizing sizing = WireSizing.of(task);
        if (sizing.recommended().isPresent()) {
            GaugeAnswer answer = sizing.recommended().get();
            assertThat(answer.fails()).isEmpty();
            assertThat(answer.conductorTemperatureK().orElseThrow())
                    .isLessThanOrEqualTo(task.insulation().ratingTemperatureK() - 10);
            assertThat(answer.totalDropFraction())
                    .isLessThanOrEqualTo(task.drops().continuousFraction());
            assertThat(sizing.judgement().findings())
                    .noneMatch(f -> f.severity() == Severity.STOP && !f.code().endsWith("-implausible"));
        } else {
            assertThat(sizing.candidates()).noneMatch(GaugeAnswer::meets);
            assertThat(sizing.judgement().findings())
                    .anyMatch(f -> f.severity() == Severity.STOP
                            && (f.code().startsWith("no-gauge-")
                                    || f.code().equals("melts-what-it-touches")
                                    || f.code().equals("connector-overloaded")));
        }
    }

    @Property(tries = 200)
    void lightestIsTheThinnestThatMeetsAndTheOptimumCostsLeast(@ForAll("tasks") WireTask task) {
        WireSizing sizing = WireSizing.of(task);
        List<GaugeAnswer> meeting =
                sizing.candidates().stream().filter(GaugeAnswer::meets).toList();
        sizing.lightest().ifPresent(lightest -> assertThat(meeting).allMatch(a -> a.massKg() >= lightest.massKg()));
        sizing.enduranceOptimal()
                .ifPresent(optimal -> assertThat(meeting)
                        .allMatch(a -> a.energyCostJ().getAsDouble()
                                >= optimal.energyCostJ().getAsDouble()));
        assertThat(sizing.enduranceOptimal().isPresent())
                .isEqualTo(task.flight().isPresent() && !meeting.isEmpty());
    }

    @Property(tries = 200)
    void thickerWireNeverDropsMoreNorCarriesLessNorWeighsLess(@ForAll("tasks") WireTask task) {
        List<GaugeAnswer> candidates = WireSizing.of(task).candidates();
        for (int i = 1; i < candidates.size(); i++) {
            GaugeAnswer thin = candidates.get(i - 1);
            GaugeAnswer thick = candidates.get(i);
            assertThat(thick.dropV()).isLessThanOrEqualTo(thin.dropV() * (1 + SLACK));
            assertThat(thick.ampacityA()).isGreaterThanOrEqualTo(thin.ampacityA());
            assertThat(thick.massKg()).isGreaterThan(thin.massKg());
            assertThat(temperatureK(thick)).isLessThanOrEqualTo(temperatureK(thin) + SLACK);
        }
    }

    @Property(tries = 200)
    void moreCurrentIsNeverCoolerNorDropsLess(
            @ForAll("tasks") WireTask task, @ForAll @DoubleRange(min = 1.01, max = 3) double ratio) {
        WireRun run = task.run();
        WireRun more = WireRun.plain("m", ratio * run.currentA(), run.lengthM(), 48);
        WireRun less = WireRun.plain("l", run.currentA(), run.lengthM(), 48);
        List<GaugeAnswer> hot = WireSizing.of(WireTasks.with(task, more)).candidates();
        List<GaugeAnswer> cool = WireSizing.of(WireTasks.with(task, less)).candidates();
        for (int i = 0; i < hot.size(); i++) {
            assertThat(temperatureK(hot.get(i))).isGreaterThanOrEqualTo(temperatureK(cool.get(i)) - SLACK);
            assertThat(hot.get(i).dropV()).isGreaterThan(cool.get(i).dropV());
        }
    }

    @Property(tries = 200)
    void higherUpIsNeverCooler(
            @ForAll @IntRange(min = 2, max = 30) int awg,
            @ForAll Insulation insulation,
            @ForAll @DoubleRange(min = 0.01, max = 1.5) double load,
            @ForAll @DoubleRange(min = -500, max = 10_000) double altitudeM,
            @ForAll @DoubleRange(min = 1, max = 5000) double climbM) {
        Wire wire = Wire.usual(Gauge.awg(awg), insulation);
        HeatPath low = new HeatPath(wire, Surroundings.freeAir(300, altitudeM));
        HeatPath high = new HeatPath(wire, Surroundings.freeAir(300, altitudeM + climbM));
        double currentA = load * SteadyState.currentA(wire, low, insulation.ratingTemperatureK());
        assertThat(SteadyState.of(wire, high, currentA).orElseThrow().conductorK())
                .isGreaterThanOrEqualTo(
                        SteadyState.of(wire, low, currentA).orElseThrow().conductorK() - SLACK);
    }

    @Property(tries = 200)
    void currentAtTheRatingHeatsTheWireToItsRating(@ForAll("tasks") WireTask task) {
        for (Gauge gauge : WireGauges.offered(task.system())) {
            Wire wire = task.wire(gauge);
            HeatPath path = new HeatPath(wire, task.effectiveSurroundings());
            double ratingK = task.insulation().ratingTemperatureK();
            double ampacityA = SteadyState.currentA(wire, path, ratingK);
            if (ampacityA > 0) {
                assertThat(SteadyState.of(wire, path, ampacityA).orElseThrow().conductorK())
                        .isCloseTo(ratingK, within(1e-3));
            }
        }
    }

    @Property(tries = 200)
    void heatMadeIsHeatGivenOff(@ForAll("tasks") WireTask task) {
        for (Gauge gauge : WireGauges.offered(task.system())) {
            Wire wire = task.wire(gauge);
            HeatPath path = new HeatPath(wire, task.effectiveSurroundings());
            double currentA = task.run().wireCurrentA();
            SteadyState.of(wire, path, currentA).ifPresent(state -> {
                double made = currentA * currentA * wire.resistancePerMOhm(state.conductorK());
                double given = path.heatWPerM(state.surfaceK());
                assertThat(given).isCloseTo(made, within(1e-4 + 1e-5 * made));
            });
        }
    }

    /** A wire that does not settle counts as hot as any. */
    private static double temperatureK(GaugeAnswer answer) {
        return answer.conductorTemperatureK().orElse(Copper.MELTING_POINT_K);
    }
}
