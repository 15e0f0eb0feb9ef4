package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import trestle.api.model.ApiFault;
import trestle.binding.FieldPath;
import trestle.binding.Picks;
import trestle.binding.Refusal;
import trestle.endpoint.Table;

/**
 * A full factorial plan: the points from one to another, the last factor fastest.
 *
 * @param studied the calculation with its base
 * @param factors the fields and their values
 * @param from first point, from 0
 * @param to the point after the last
 */
record TradePlan(Studied<?, ?, ?> studied, List<Factor> factors, long from, long to) {
    /** Points are worked so many at a time, on all cores; more are taken while that is quick. */
    private static final int LEAST_AT_ONCE = 8;

    private static final int MOST_AT_ONCE = 512;

    /** Of the whole plan; may be more than fit into a long only for plans that are refused. */
    static double points(List<Factor> factors) {
        return factors.stream().mapToDouble(Factor::count).reduce(1, (a, b) -> a * b);
    }

    long size() {
        return to - from;
    }

    /** Names of the columns: the fields, then the figures; a field that is named as a figure says that it was asked. */
    List<String> columns() {
        List<String> columns = new ArrayList<>(names());
        studied.picks().forEach(pick -> columns.add(pick.dotted()));
        return columns;
    }

    private List<String> names() {
        List<String> figures = studied.picks().stream().map(FieldPath::dotted).toList();
        return factors.stream()
                .map(factor -> factor.path().dotted())
                .map(name -> figures.contains(name) ? "request." + name : name)
                .toList();
    }

    Table table() {
        return new Table(columns(), new Rows());
    }

    /** The values of a point. */
    private List<JsonNode> values(long point) {
        JsonNode[] values = new JsonNode[factors.size()];
        long rest = point;
        for (int i = factors.size() - 1; i >= 0; i--) {
            int count = factors.get(i).count();
            values[i] = factors.get(i).value((int) (rest % count));
            rest /= count;
        }
        return List.of(values);
    }

    Map<String, Object> row(long point) {
        List<JsonNode> values = values(point);
        Map<String, Object> row = new LinkedHashMap<>();
        Map<JsonPointer, JsonNode> at = new LinkedHashMap<>();
        List<String> names = names();
        for (int i = 0; i < factors.size(); i++) {
            row.put(names.get(i), plain(values.get(i)));
            at.put(factors.get(i).pointer(), values.get(i));
        }
        try {
            List<Optional<JsonNode>> figures = new Picks(studied.picks()).whereThere(studied.answer(at));
            for (int i = 0; i < figures.size(); i++) {
                String name = studied.picks().get(i).dotted();
                figures.get(i).ifPresent(value -> row.put(name, plain(value)));
            }
        } catch (Refusal refused) {
            row.put(Table.ERROR, said(refused));
        }
        return row;
    }

    private static Object plain(JsonNode value) {
        if (value.isNumber()) {
            return value.isIntegralNumber() ? (Object) value.longValue() : (Object) value.doubleValue();
        }
        return value.isBoolean() ? (Object) value.booleanValue() : value.asText();
    }

    private static String said(Refusal refused) {
        return refused.faults().isEmpty()
                ? String.valueOf(refused.getMessage())
                : refused.faults().stream()
                        .map(TradePlan::said)
                        .reduce((a, b) -> a + "; " + b)
                        .orElse("");
    }

    private static String said(ApiFault fault) {
        return fault.at() + ": " + fault.message();
    }

    /** Rows a few at a time, so that whoever takes them may stop, and nothing is worked far ahead. */
    private final class Rows implements Iterator<Map<String, Object>> {
        private final Deque<Map<String, Object>> ready = new ArrayDeque<>();
        private long next = from;
        private int atOnce = LEAST_AT_ONCE;

        @Override
        public boolean hasNext() {
            return !ready.isEmpty() || next < to;
        }

        @Override
        public Map<String, Object> next() {
            if (ready.isEmpty()) {
                work();
            }
            return ready.removeFirst();
        }

        private void work() {
            if (next >= to) {
                throw new NoSuchElementException();
            }
            long first = next;
            int count = (int) Math.min(atOnce, to - first);
            ready.addAll(Runs.of(count, i -> row(first + i)));
            next += count;
            atOnce = Math.min(MOST_AT_ONCE, 2 * atOnce);
        }
    }
}
