package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trestle.massbalance.Balance;
import trestle.massbalance.Centre;
import trestle.massbalance.Planform;
import trestle.units.Length;
import trestle.units.Share;

/** The mean aerodynamic chord enlarged: the CG with its tolerance among limits, target and neutral point. */
final class CloseUp {
    private static final double SHORTEST_M = 0.03;
    private static final double ROOM = 0.06;
    private static final double HEIGHT = 62;
    private static final int TICKS = 7;
    private static final double TICK = 4;

    /** Beyond this share of a chord outside it, the chord's other end is not drawn to. */
    private static final double FAR = 3;

    private final Balance balance;
    private final Landmarks landmarks;
    private final Reach along = new Reach();

    CloseUp(Balance balance, Landmarks landmarks) {
        this.balance = balance;
        this.landmarks = landmarks;
        double armM = balance.centre().armM();
        double toleranceM = balance.centre().armToleranceM();
        along.to(armM - toleranceM).to(armM + toleranceM);
        along.to(landmarks.forward()).to(landmarks.aft()).to(landmarks.target());
        balance.neutralPoint()
                .ifPresent(np -> along.to(np.armM() - np.toleranceM()).to(np.armM() + np.toleranceM()));
        listed().ifPresent(list -> along.to(list.armM() - list.armToleranceM()).to(list.armM() + list.armToleranceM()));
        landmarks
                .planform()
                .filter(this::near)
                .ifPresent(w -> along.to(w.armM(0)).to(w.armM(1)));
        along.atLeast(SHORTEST_M, ROOM);
    }

    /** The CG of the list beside that of the scales. */
    private Optional<Centre> listed() {
        boolean weighed = balance.weighed().filter(w -> w.armM().isPresent()).isPresent();
        return weighed ? Optional.of(balance.list()) : Optional.empty();
    }

    private boolean near(Planform wing) {
        double chordM = wing.meanAerodynamicChordM();
        return along.greatest() > wing.armM(0) - FAR * chordM && along.least() < wing.armM(1) + FAR * chordM;
    }

    void draw(Page page) {
        Panel panel = new Panel("Close-up", keys(), HEIGHT, new Axis(0, 1, List.of(), false), this::draw);
        Panels.draw(page, axis(), "Aft of the datum, mm", flags(), List.of(panel));
        landmarks.planform().ifPresent(wing -> percents(page, wing));
    }

    private List<KeyEntry> keys() {
        List<KeyEntry> keys = new ArrayList<>();
        if (landmarks.forward().isPresent() || landmarks.aft().isPresent()) {
            keys.add(KeyEntry.band(Style.GOOD_BAND, "allowed"));
            keys.add(KeyEntry.band(Style.LIMIT_BAND, "outside"));
        }
        if (landmarks.planform().isPresent()) {
            keys.add(KeyEntry.band(Style.PALE, "MAC"));
        }
        return keys;
    }

    private Axis axis() {
        return Axis.between(Length.mmFromM(along.least()), Length.mmFromM(along.greatest()), TICKS);
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        double armM = balance.centre().armM();
        double toleranceM = balance.centre().armToleranceM();
        flags.add(new Flag(
                Length.mmFromM(armM),
                Style.INK,
                (listed().isPresent() ? "weighed CG " : "CG ")
                        + BalanceFigure.mm(armM)
                        + (toleranceM > 0 ? " ± " + BalanceFigure.mm(toleranceM) : "")));
        add(flags, landmarks.target(), Style.SECOND_FILL, "target");
        balance.neutralPoint()
                .ifPresent(np -> flags.add(new Flag(
                        Length.mmFromM(np.armM()),
                        Style.THIRD_FILL,
                        "neutral point " + BalanceFigure.mm(np.armM()) + " ± " + BalanceFigure.mm(np.toleranceM()))));
        add(flags, landmarks.forward(), Style.LIMIT_TEXT, "forward limit");
        add(flags, landmarks.aft(), Style.LIMIT_TEXT, "aft limit");
        listed().ifPresent(list -> add(flags, OptionalDouble.of(list.armM()), Style.FIRST_FILL, "by the list"));
        return flags;
    }

    private static void add(List<Flag> flags, OptionalDouble armM, Style style, String what) {
        armM.ifPresent(at -> flags.add(new Flag(Length.mmFromM(at), style, what + " " + BalanceFigure.mm(at))));
    }

    private void draw(Plot plot) {
        shade(plot);
        landmarks.planform().ifPresent(wing -> chord(plot, wing));
        double toleranceM = balance.centre().armToleranceM();
        balance.neutralPoint().ifPresent(np -> {
            span(plot, Style.THIRD_LINE, np.armM(), np.toleranceM(), 0.5);
            plot.dot(Style.THIRD_FILL, Length.mmFromM(np.armM()), 0.5);
        });
        landmarks.target().ifPresent(at -> plot.ring(Style.SECOND_FILL, Length.mmFromM(at), 0.5));
        listed().ifPresent(list -> {
            span(plot, Style.FIRST_LINE, list.armM(), list.armToleranceM(), 0.36);
            plot.dot(Style.FIRST_FILL, Length.mmFromM(list.armM()), 0.36);
        });
        span(plot, Style.INK_LINE, balance.centre().armM(), toleranceM, 0.72);
        CgSymbol.draw(plot.svg(), plot.x(Length.mmFromM(balance.centre().armM())), plot.y(0.72), 7);
    }

    private void shade(Plot plot) {
        Plot inM = new Plot(
                plot.svg(),
                plot.area(),
                new Axis(along.least(), along.greatest(), List.of(), false),
                new Axis(0, 1, List.of(), false));
        landmarks.shade(inM);
    }

    private static void chord(Plot plot, Planform wing) {
        double from = plot.x(Length.mmFromM(wing.armM(0)));
        double to = plot.x(Length.mmFromM(wing.armM(1)));
        if (to > from) {
            plot.svg().rect(Style.PALE, new Box(from, plot.y(0.14), to - from, 8));
        }
    }

    /** A value's tolerance to both sides. */
    private static void span(Plot plot, Style style, double armM, double toleranceM, double at) {
        if (toleranceM > 0) {
            double from = plot.x(Length.mmFromM(armM - toleranceM));
            double to = plot.x(Length.mmFromM(armM + toleranceM));
            double y = plot.y(at);
            plot.svg().line(style, from, y, to, y);
            plot.svg().line(style, from, y - 5, from, y + 5);
            plot.svg().line(style, to, y - 5, to, y + 5);
        }
    }

    /** The same axis in shares of the mean aerodynamic chord. */
    private void percents(Page page, Planform wing) {
        Axis percent = Axis.between(
                Share.percentFromFraction(wing.macFraction(along.least())),
                Share.percentFromFraction(wing.macFraction(along.greatest())),
                TICKS);
        DoubleUnaryOperator place = value -> Panels.LEFT + Panels.WIDTH * percent.fraction(value);
        double y = page.y();
        page.svg().line(Style.AXIS, Panels.LEFT, y, Panels.RIGHT, y);
        for (Tick tick : percent.ticks()) {
            double x = place.applyAsDouble(tick.at());
            page.svg().line(Style.AXIS, x, y, x, y + TICK);
        }
        Panels.level(page, percent.ticks(), place, Style.MUTED);
        Panels.title(page, "Of the mean aerodynamic chord, %");
    }
}
