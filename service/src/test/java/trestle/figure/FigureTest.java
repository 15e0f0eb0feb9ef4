package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.battery.Load;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.finding.Basis;
import trestle.finding.Caution;
import trestle.flight.Airframe;
import trestle.flight.Endurance;
import trestle.flight.EnduranceTask;
import trestle.flight.FixedEnergy;
import trestle.launch.Launch;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LiftOff;
import trestle.magnetics.CompassClearance;
import trestle.magnetics.CompassTask;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.MassBalance;
import trestle.massbalance.Station;
import trestle.massbalance.Tailless;
import trestle.massbalance.Wing;
import trestle.propulsion.PropulsionMatch;
import trestle.rails.Rail;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Regulator;
import trestle.rails.Supply;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeSystem;
import trestle.wiring.WireRun;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

class FigureTest {
    private static final String HOSTILE =
            "<script>alert('x')</script> & \"q\" and on and on, to eighty characters in all!!";

    static Stream<String> names() {
        return Samples.NAMES.stream();
    }

    @Test
    void oneItemAloneIsDrawnWithItsCg() {
        Drawing drawing = balance(List.of(Samples.item("ballast", 500, 0, 0, 0, 0)), false);
        assertThat(drawing.words()).contains("500 g, CG 0.0 mm aft of the datum.", "ballast 500 g");
    }

    @ParameterizedTest
    @MethodSource("names")
    void textsKeepClearOfEachOtherOfCurvesAndOfTheEdge(String name) {
        Drawing.read(Samples.figure(name, Theme.LIGHT)).isSound().keepsCurvesClearOfTexts();
    }

    /** 11 pixels are the small print of a page; a phone held upright is 360 wide. */
    @ParameterizedTest
    @MethodSource("names")
    void textsAreLegibleOnAPhone(String name) {
        Drawing drawing = Drawing.read(Samples.figure(name, Theme.LIGHT));
        double width = Double.parseDouble(drawing.root().getAttribute("viewBox").split(" ")[2]);
        assertThat(drawing.elements("text"))
                .allMatch(t -> Double.parseDouble(t.getAttribute("font-size")) * 360 / width > 11);
    }

    @ParameterizedTest
    @MethodSource("names")
    void figureSaysWhatItIsToThoseWhoCannotSeeIt(String name) {
        Drawing drawing = Drawing.read(Samples.figure(name, Theme.LIGHT));
        String[] ids = drawing.root().getAttribute("aria-labelledby").split(" ");
        assertThat(drawing.elements("title").get(0).getAttribute("id")).isEqualTo(ids[0]);
        assertThat(drawing.elements("desc").get(0).getAttribute("id")).isEqualTo(ids[1]);
        assertThat(drawing.elements("title").get(0).getTextContent())
                .isEqualTo(drawing.words().get(0));
        assertThat(drawing.elements("desc").get(0).getTextContent()).hasSizeGreaterThan(40);
    }

    @ParameterizedTest
    @MethodSource("names")
    void figureFetchesNothingAndRunsNothing(String name) {
        String svg = Samples.figure(name, Theme.AUTO);
        assertThat(svg.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
                .doesNotContain("http", "href", "url(", "@import", "<script", "<image", "onload");
    }

    @ParameterizedTest
    @MethodSource("names")
    void themesDifferInColourOnly(String name) {
        String light = Samples.figure(name, Theme.LIGHT);
        for (Theme theme : List.of(Theme.DARK, Theme.AUTO)) {
            assertThat(withoutColour(Samples.figure(name, theme))).isEqualTo(withoutColour(light));
        }
        assertThat(light).doesNotContain("var(", "@media");
        assertThat(Samples.figure(name, Theme.AUTO)).contains("prefers-color-scheme:dark");
    }

    @ParameterizedTest
    @MethodSource("names")
    void bytesAreAlikeInEveryLocale(String name) {
        Locale before = Locale.getDefault();
        String expected = Samples.figure(name, Theme.LIGHT);
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Samples.figure(name, Theme.LIGHT)).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void namesOfUsersAreEscapedAndShortened() {
        Drawing drawing = balance(
                List.of(
                        Samples.item(HOSTILE, 500, 100, 0, 5, 3),
                        Samples.item("סוללה קדמית ארוכה מאוד", 300, 400, 0, 5, 3),
                        Samples.item("a\u202eb\u0000c\ud800", 100, 900, 0, 0, 0)),
                true);
        assertThat(drawing.svg()).doesNotContain("<script", "\u202e", "\u0000", "\ud800<");
        assertThat(drawing.words())
                .contains("<script>alert('x')… 500 g", "abc\ufffd 100 g")
                .anyMatch(word -> word.startsWith("\u2068סוללה") && word.endsWith("…\u2069 300 g"));
        String family = "👩‍👩‍👧‍👦";
        assertThat(balance(List.of(Samples.item(family.repeat(9), 200, 50, 0, 0, 0)), false)
                        .words())
                .contains(family + "… 200 g");
    }

    @Test
    void crossedLimitsLeaveNoPlaceForTheCg() {
        Drawing drawing = Drawing.read(balanceSvg(new BalanceTask(
                        List.of(Samples.item("all", 900, 500, 0, 5, 3)),
                        Optional.empty(),
                        Optional.of(Samples.wing()),
                        Optional.of(new Tailless(-0.02)),
                        Optional.of(limits(0.4, 0.2)),
                        Optional.empty())))
                .isSound();
        assertThat(drawing.elements("rect"))
                .filteredOn(r -> r.getAttribute("class").equals(Style.LIMIT_BAND.cssClass()))
                .as("the key's sign and the whole close-up")
                .hasSize(2);
        assertThat(drawing.words()).anyMatch(word -> word.startsWith("Stop: "));
    }

    @Test
    void manyItemsAreAllDrawnThoughNotAllNamed() {
        List<Item> items = IntStream.range(0, 300)
                .mapToObj(i -> Samples.item("item " + i, 20 + i, i * 37 % 1300, i % 9, 1, 1))
                .toList();
        Drawing drawing = balance(items, true);
        assertThat(drawing.elements("circle"))
                .filteredOn(c -> c.getAttribute("class").equals(Style.MASS_EDGE.cssClass()))
                .hasSize(300);
        assertThat(drawing.words()).anyMatch(word -> word.endsWith("labels omitted (no room)."));
    }

    @Test
    void wingThatIsFarFromTheItemsStillFits() {
        balance(List.of(Samples.item("far", 500, 90_000, -4_000, 0, 0)), true);
    }

    @Test
    void everyFigureSaysThatItIsNoApproval() {
        for (String name : Samples.NAMES) {
            assertThat(String.join(
                            " ", Drawing.read(Samples.figure(name, Theme.LIGHT)).words()))
                    .as(name)
                    .endsWith(Caution.AID);
        }
    }

    @Test
    void packThatCannotFeedItsLoadSaysSo() {
        PackTask usual = Samples.pack();
        PackTask task = new PackTask(
                usual.pack(), new Load.Power(9000), usual.cutoff(), usual.surroundings(), usual.reserveFraction());
        Drawing drawing = Drawing.read(PackFigure.of(task, PackEnergy.of(task), Theme.LIGHT))
                .isSound();
        assertThat(drawing.words())
                .as("no scales without a curve")
                .hasSizeLessThan(7)
                .contains("The pack cannot feed this load.")
                .anyMatch(word -> word.startsWith("Stop: "));
        assertThat(drawing.elements("polyline")).isEmpty();
    }

    @Test
    void airspeedAtStallPowerIsDrawnForAHeavyAircraft() {
        EnduranceTask task = Samples.endurance(new Airframe(25, 0.3, 2, 0.9), new FixedEnergy(400 * 3600), 15);
        Drawing drawing = Drawing.read(EnduranceFigure.of(task, Endurance.of(task), Theme.LIGHT))
                .isSound();
        assertThat(drawing.words()).anyMatch(word -> word.startsWith("Stop: 15.0 m/s"));
    }

    @Test
    void gaugesThatAllFailAreAllOffTheScale() {
        WireTask usual = Samples.wire();
        WireTask task = new WireTask(
                WireRun.plain("lead", 900, 5, 22),
                usual.insulation(),
                OptionalDouble.empty(),
                usual.surroundings(),
                usual.drops(),
                usual.touches(),
                GaugeSystem.METRIC,
                Optional.of(Gauge.parse(GaugeSystem.AWG, "13")),
                Optional.empty());
        WireSizing sizing = WireSizing.of(task);
        Drawing drawing = Drawing.read(WireFigure.of(task, sizing, Theme.LIGHT)).isSound();
        int gauges = sizing.candidates().size() + 1;
        assertThat(drawing.elements("polygon"))
                .as("in all three panels, and in the key")
                .hasSize(3 * gauges + 1);
        assertThat(drawing.words()).contains("checked AWG 13");
    }

    @Test
    void gaugesThatFailAreKnownWithoutColour() {
        Drawing drawing = Drawing.read(Samples.figure("wires", Theme.LIGHT));
        assertThat(drawing.elements("line"))
                .anyMatch(l -> l.getAttribute("class").equals(Style.LIMIT_CROSS.cssClass()));
        assertThat(drawing.elements("circle"))
                .noneMatch(c -> c.getAttribute("class").equals(Style.LIMIT_FILL.cssClass()));
    }

    @Test
    void gaugesAreNumberedEvenly() {
        Drawing drawing = Drawing.read(Samples.figure("wires", Theme.LIGHT));
        double lowest = drawing.texts().stream()
                .filter(t -> t.content().matches("\\d+"))
                .mapToDouble(t -> t.box().top())
                .max()
                .orElse(0);
        List<Integer> gauges = drawing.texts().stream()
                .filter(t -> t.box().top() > lowest - 5 && t.content().matches("\\d+"))
                .map(t -> Integer.valueOf(t.content()))
                .toList();
        assertThat(gauges).hasSizeGreaterThan(4);
        for (int i = 2; i < gauges.size(); i++) {
            assertThat(gauges.get(i) - gauges.get(i - 1)).isEqualTo(gauges.get(1) - gauges.get(0));
        }
    }

    @Test
    void launchWithoutAPathShowsItsSpeeds() {
        for (Launch launch : List.of(
                new Launch.Dolly(new LiftOff.Airspeed(40), 0.05, 0.3, 1, 0.3),
                new Launch.Hand(3, 0, 1.2),
                new Launch.Bungee(60, 8, 0.5, 0.8, 0.1, 0.2, 1))) {
            LaunchAndClimbTask task = Samples.launch(launch);
            Drawing drawing = Drawing.read(LaunchFigure.of(task, LaunchAndClimb.of(task), List.of(), Theme.LIGHT))
                    .isSound();
            assertThat(drawing.words()).contains("stall 10.1", "climb 13.2");
        }
    }

    @Test
    void curvesOfADriveAreKnownWithoutColour() {
        Drawing drawing = Drawing.read(Samples.figure("propulsion", Theme.LIGHT));
        assertThat(drawing.elements("polyline"))
                .extracting(curve -> curve.getAttribute("class"))
                .contains(Style.FIRST_LINE.cssClass(), Style.SECOND_DASHED.cssClass(), Style.THIRD_DOTTED.cssClass())
                .doesNotContain(Style.SECOND_LINE.cssClass(), Style.THIRD_LINE.cssClass());
    }

    @Test
    void severalMotorsHaveTheirCurrentsApart() {
        Drawing drawing = Drawing.read(
                        PropulsionFigure.of(Samples.drive(4), PropulsionMatch.of(Samples.drive(4)), Theme.LIGHT))
                .isSound();
        assertThat(drawing.words()).contains("Each motor, A", "Pack current, A");
    }

    @Test
    void railsBeyondThePageAreCounted() {
        List<Rail> rails = IntStream.range(0, 30)
                .mapToObj(i -> new Rail(
                        HOSTILE + i,
                        Samples.regulator(5, 3, OptionalDouble.empty()),
                        List.of(Samples.load("x", 1 + i, 0.5, 2)),
                        false))
                .toList();
        RailTask task = new RailTask(new Supply(25, 18), rails);
        assertThat(Drawing.read(RailFigure.of(task, Rails.of(task), Theme.LIGHT))
                        .isSound()
                        .words())
                .contains("and 6 more, not drawn.");
        RailTask none = new RailTask(new Supply(25, 18), List.of());
        assertThat(Drawing.read(RailFigure.of(none, Rails.of(none), Theme.LIGHT))
                        .isSound()
                        .words())
                .contains("There is no rail to draw.");
    }

    @Test
    void railsThatFailAreDrawnFirst() {
        Regulator regulator = Samples.regulator(5, 3, OptionalDouble.empty());
        List<Rail> rails = IntStream.range(0, 30)
                .mapToObj(i -> new Rail(
                        "rail " + i, regulator, List.of(Samples.load("x", 1, 0.1, i == 28 ? 9.5 : 0.2)), false))
                .toList();
        RailTask task = new RailTask(new Supply(25, 18), rails);
        assertThat(Drawing.read(RailFigure.of(task, Rails.of(task), Theme.LIGHT))
                        .isSound()
                        .words())
                .contains("rail 28", "rail 0")
                .doesNotContain("rail 27", "rail 29");
    }

    @Test
    void runsAreNamedWhereTheyLie() {
        CompassTask task = new CompassTask(
                List.of(Samples.run("main lead", 30, 6, false, 320), Samples.run("servo feed", 4, 3, true, 110)),
                20e-6,
                0.03,
                Basis.REQUEST);
        assertThat(compass(task).words()).contains("main lead 320", "servo feed 110");
    }

    @Test
    void compassWithoutCurrentOrWithManyRunsIsDrawn() {
        CompassTask quiet = new CompassTask(List.of(Samples.run("off", 0, 5, false, 50)), 20e-6, 0.03, Basis.REQUEST);
        assertThat(compass(quiet).words()).contains("no run carries a current");
        CompassTask many = new CompassTask(
                IntStream.range(0, 9)
                        .mapToObj(i -> Samples.run(HOSTILE, 1 + i, 5, i % 2 == 0, 60 + 9 * i))
                        .toList(),
                20e-6,
                0.03,
                Basis.REQUEST);
        assertThat(compass(many).words()).contains("Not drawn: 3 weaker or without current.");
    }

    private static Drawing compass(CompassTask task) {
        return Drawing.read(CompassFigure.of(task, CompassClearance.of(task), Theme.LIGHT))
                .isSound();
    }

    private static Drawing balance(List<Item> items, boolean winged) {
        Optional<Wing> wing = winged ? Optional.of(Samples.wing()) : Optional.empty();
        return Drawing.read(balanceSvg(new BalanceTask(
                        items, Optional.empty(), wing, Optional.empty(), Optional.empty(), Optional.empty())))
                .isSound();
    }

    private static String balanceSvg(BalanceTask task) {
        return BalanceFigure.of(task, MassBalance.of(task), Theme.LIGHT);
    }

    private static Limits limits(double forward, double aft) {
        return new Limits(
                OptionalDouble.empty(),
                Optional.of(new Station.AtMacFraction(forward)),
                Optional.of(new Station.AtMacFraction(aft)),
                OptionalDouble.empty());
    }

    private static String withoutColour(String svg) {
        return svg.replaceAll("<style>.*</style>", "").replaceAll("trestle-(light|dark|auto)", "");
    }
}
