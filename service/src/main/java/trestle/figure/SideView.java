package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Item;
import trestle.massbalance.Planform;
import trestle.massbalance.PointMass;
import trestle.massbalance.Tail;
import trestle.massbalance.Travel;
import trestle.units.Length;

/** Items as discs of an area like their mass, at their places, one scale for both directions. */
final class SideView {
    private static final double GREATEST_RADIUS = 17;
    private static final double LEAST_RADIUS = 1.5;

    /** Shortest aircraft drawn, m: a single item needs some length about it. */
    private static final double SHORTEST_M = 0.2;

    private static final double ROOM = 0.05;

    /** The datum is shown where it is no further off than this share of the aircraft. */
    private static final double DATUM_NEAR = 0.35;

    private static final double MOST_HEIGHT = 220;
    private static final double WING_STRIP = 26;
    private static final int MOST_NAME_ROWS = 12;
    private static final double WIDEST_NAME = 134;
    private static final int TICKS = 7;

    private final BalanceTask task;
    private final Balance balance;
    private final Landmarks landmarks;
    private final Reach along = new Reach();
    private final Reach upright = new Reach();

    SideView(BalanceTask task, Balance balance, Landmarks landmarks) {
        this.task = task;
        this.balance = balance;
        this.landmarks = landmarks;
        reach();
    }

    private void reach() {
        upright.to(0).to(balance.centre().verticalM());
        along.to(balance.centre().armM());
        for (Item item : task.items()) {
            along.to(item.armM());
            upright.to(item.verticalM().orElse(0));
            item.travel().ifPresent(travel -> along.to(travel.fromM()).to(travel.toM()));
        }
        landmarks.planform().ifPresent(wing -> along.to(wing.armM(0)).to(wing.armM(1)));
        landmarks.tail().ifPresent(tail -> along.to(tail.quarterChordArmM()).to(trailingEdgeM(tail)));
        along.to(landmarks.forward()).to(landmarks.aft()).to(landmarks.neutralPoint());
        double datumOff = Math.max(along.least(), -along.greatest());
        if (datumOff > 0 && datumOff < DATUM_NEAR * along.span()) {
            along.to(0);
        }
        double leastSpan = upright.span() * Panels.WIDTH / (MOST_HEIGHT - 2 * GREATEST_RADIUS);
        along.atLeast(Math.max(SHORTEST_M, leastSpan), ROOM);
    }

    void draw(Page page) {
        double perM = Panels.WIDTH / along.span();
        Heading heading = new Heading("Side view", keys());
        heading.draw(page.svg(), page.y());
        page.advance(heading.height() + 6);
        Map<Flag, Double> flags = flags();
        Flags names = new Flags(List.copyOf(flags.keySet()), this::x, MOST_NAME_ROWS);
        page.advance(names.height());
        names.draw(page.svg(), page.y());
        Axis x = axis();
        double height = upright.span() * perM + 2 * GREATEST_RADIUS + 10;
        Box area = new Box(Panels.LEFT, page.y(), Panels.WIDTH, height);
        double top = upright.greatest() + (GREATEST_RADIUS + 5) / perM;
        Axis y = new Axis(top - height / perM, top, List.of(), false);
        Plot plot = new Plot(page.svg(), area, x, y);
        plot.grid();
        landmarks.shadeAllowed(plot);
        names.guides(plot, flag -> plot.y(flags.get(flag)));
        masses(plot);
        page.advance(height);
        chords(page);
        Panels.level(page, x.ticks(), this::x, Style.MUTED);
        Panels.title(page, "Aft of the datum, mm; heights to the same scale");
        if (names.leftOut() > 0) {
            page.note(
                    Style.MUTED,
                    names.leftOut()
                            + (names.leftOut() == 1 ? " label omitted (no room)." : " labels omitted (no room)."));
        }
        page.advance(6);
    }

    /** The mean aerodynamic chord (MAC), the tail's and the lever between them, on a strip of their own. */
    private void chords(Page page) {
        if (landmarks.planform().isEmpty()) {
            return;
        }
        Svg svg = page.svg();
        wing(svg, page.y() + WING_STRIP / 2);
        LabelRows names = new LabelRows(wingLabels(), page.y() + WING_STRIP - 3);
        names.draw(svg);
        page.advance(WING_STRIP + names.height());
        svg.line(Style.AXIS, Panels.LEFT, page.y(), Panels.RIGHT, page.y());
    }

    private Axis axis() {
        Axis mm = Axis.between(Length.mmFromM(along.least()), Length.mmFromM(along.greatest()), TICKS);
        List<Tick> ticks = mm.ticks().stream()
                .map(tick -> new Tick(Length.mFromMm(tick.at()), tick.label()))
                .toList();
        return new Axis(along.least(), along.greatest(), ticks, false);
    }

    private double x(double armM) {
        return Panels.LEFT + Panels.WIDTH * (armM - along.least()) / along.span();
    }

    private List<KeyEntry> keys() {
        List<KeyEntry> keys = new ArrayList<>();
        keys.add(new KeyEntry(KeyEntry.Sign.CG, Style.INK, "CG"));
        keys.add(KeyEntry.dot(Style.MASS, "area as mass"));
        if (task.items().stream().anyMatch(item -> item.travel().isPresent())) {
            keys.add(KeyEntry.line(Style.TRAVEL, "movable"));
        }
        return keys;
    }

    private record Alike(String name, double massKg, double armM, double verticalM) {}

    /** A flag for each item and its height; the heaviest first. */
    private Map<Flag, Double> flags() {
        Map<Flag, Double> flags = new LinkedHashMap<>();
        alike().entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<Alike, Integer> e) -> -e.getValue() * e.getKey().massKg))
                .forEach(e -> flags.put(flag(e.getKey(), e.getValue()), e.getKey().verticalM));
        return flags;
    }

    /** Items that look the same from the side, such as the servos of both wings, and how many. */
    private Map<Alike, Integer> alike() {
        Map<Alike, Integer> alike = new LinkedHashMap<>();
        for (Item item : task.items()) {
            double verticalM = item.verticalM().orElse(0);
            alike.merge(
                    new Alike(item.name(), item.massKg(), item.armM(), verticalM), item.quantityCount(), Integer::sum);
        }
        return alike;
    }

    private static Flag flag(Alike alike, int count) {
        return new Flag(
                alike.armM,
                Style.MUTED,
                Words.name(alike.name, WIDEST_NAME)
                        + (count > 1 ? " " + count + " × " : " ")
                        + BalanceFigure.mass(alike.massKg));
    }

    private void masses(Plot plot) {
        Svg svg = plot.svg();
        svg.line(Style.AXIS, plot.area().left(), plot.y(0), plot.area().right(), plot.y(0));
        List<Item> heaviestFirst = new ArrayList<>(task.items());
        heaviestFirst.sort(Comparator.comparingDouble(item -> -item.totalMassKg()));
        double greatestKg = heaviestFirst.get(0).totalMassKg();
        for (Item item : heaviestFirst) {
            PointMass mass = item.pointMass();
            double y = plot.y(mass.verticalM());
            item.travel().ifPresent(travel -> travel(svg, travel, y));
            double radius = Math.max(LEAST_RADIUS, GREATEST_RADIUS * Math.sqrt(mass.massKg() / greatestKg));
            svg.circle(Style.MASS, x(mass.armM()), y, radius);
            svg.circle(Style.MASS_EDGE, x(mass.armM()), y, radius);
        }
        double cgX = x(balance.centre().armM());
        svg.line(Style.GUIDE, cgX, plot.area().top(), cgX, plot.area().bottom());
        CgSymbol.draw(svg, cgX, plot.y(balance.centre().verticalM()), 6);
    }

    private void travel(Svg svg, Travel travel, double y) {
        double from = x(travel.fromM());
        double to = x(travel.toM());
        svg.line(Style.TRAVEL, from, y, to, y);
        svg.line(Style.TRAVEL, from, y - 3, from, y + 3);
        svg.line(Style.TRAVEL, to, y - 3, to, y + 3);
    }

    private void wing(Svg svg, double y) {
        landmarks.planform().ifPresent(wing -> chord(svg, wing.armM(0), wing.armM(1), y));
        if (landmarks.planform().isPresent() && landmarks.tail().isPresent()) {
            Tail tail = landmarks.tail().get();
            chord(svg, leadingEdgeM(tail), trailingEdgeM(tail), y);
            double from = x(landmarks.planform().get().quarterMacArmM());
            double to = x(tail.quarterChordArmM());
            svg.line(Style.INK_LINE, from, y, to, y);
            svg.line(Style.INK_LINE, from, y - 7, from, y + 7);
            svg.line(Style.INK_LINE, to, y - 7, to, y + 7);
        }
    }

    private void chord(Svg svg, double fromM, double toM, double y) {
        svg.rect(Style.PALE, new Box(x(fromM), y - 4, x(toM) - x(fromM), 8));
    }

    private List<Label> wingLabels() {
        List<Label> labels = new ArrayList<>();
        landmarks
                .planform()
                .ifPresent(wing -> labels.add(
                        label(wing.armM(0.5), "MAC " + BalanceFigure.wholeMm(wing.meanAerodynamicChordM()) + " mm")));
        if (landmarks.planform().isPresent() && landmarks.tail().isPresent()) {
            Planform wing = landmarks.planform().get();
            double tailM = landmarks.tail().get().quarterChordArmM();
            double leverM = tailM - wing.quarterMacArmM();
            labels.add(new Label(
                    x(tailM),
                    0,
                    Anchor.END,
                    Font.TEXT,
                    Style.MUTED,
                    "tail arm " + BalanceFigure.wholeMm(leverM) + " mm"));
        }
        return labels;
    }

    private Label label(double armM, String text) {
        return new Label(x(armM), 0, Anchor.MIDDLE, Font.TEXT, Style.MUTED, text);
    }

    private static double leadingEdgeM(Tail tail) {
        return tail.quarterChordArmM() - 0.25 * tail.areaM2() / tail.spanM();
    }

    private static double trailingEdgeM(Tail tail) {
        return tail.quarterChordArmM() + 0.75 * tail.areaM2() / tail.spanM();
    }
}
