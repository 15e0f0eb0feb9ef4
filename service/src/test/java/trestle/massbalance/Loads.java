package trestle.massbalance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Printed loads as items; a balance is free of units, so pounds and inches stand as they are. */
final class Loads {
    private Loads() {}

    /** The rows of one example in a source's loads.csv: example, item, weight, arm. */
    static List<Item> of(String source, String example) {
        String path = "/reference/" + source + "/loads.csv";
        try (InputStream stream = Loads.class.getResourceAsStream(path)) {
            List<Item> items = new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split(","))
                    .filter(cells -> cells[0].equals(example))
                    .map(cells -> item(cells[1], Double.parseDouble(cells[2]), Double.parseDouble(cells[3])))
                    .toList();
            if (items.isEmpty()) {
                throw new IllegalArgumentException(example + " is not in " + path);
            }
            return items;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** One exact item of unknown lateral and vertical place. */
    static Item item(String name, double mass, double arm) {
        return new Item(name, 1, mass, arm, OptionalDouble.empty(), OptionalDouble.empty(), 0, 0, Optional.empty());
    }

    /** An exact item that can be moved. */
    static Item movable(String name, double mass, double arm, double from, double to) {
        return new Item(
                name,
                1,
                mass,
                arm,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Optional.of(new Travel(from, to)));
    }

    /** An item that stays, with tolerances. */
    static Item uncertain(String name, int quantity, double mass, double arm, double massTol, double armTol) {
        return new Item(
                name,
                quantity,
                mass,
                arm,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                massTol,
                armTol,
                Optional.empty());
    }

    /** A task with items alone. */
    static BalanceTask task(List<Item> items) {
        return new BalanceTask(
                items, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A task with items and a target. */
    static BalanceTask task(List<Item> items, Target target) {
        return new BalanceTask(
                items, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(target));
    }

    /** A task with items and limits. */
    static BalanceTask task(List<Item> items, Limits limits) {
        return new BalanceTask(
                items, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(limits), Optional.empty());
    }

    /** A task with items and a weighing. */
    static BalanceTask task(List<Item> items, Weighing weighing) {
        return new BalanceTask(
                items, Optional.of(weighing), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A scale without tare, lateral place or tolerance. */
    static Support support(String name, double reading, double arm) {
        return new Support(name, reading, 0, arm, OptionalDouble.empty(), 0, 0);
    }

    /** A scale without tare or tolerance. */
    static Support support(String name, double reading, double arm, double lateral) {
        return new Support(name, reading, 0, arm, OptionalDouble.of(lateral), 0, 0);
    }
}
