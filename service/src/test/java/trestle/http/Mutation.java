package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import trestle.binding.Json;

/** Spoils a request: a value that is of another kind or out of all proportion, a field more or less, a byte. */
final class Mutation {
    private static final List<String> VALUES = List.of(
            "0",
            "-0.0",
            "-1",
            "1e-310",
            "4.9e-324",
            "1e-9",
            "1e9",
            "1.7e308",
            "-1.7e308",
            "123456789012345678901234567890",
            "null",
            "true",
            "\"\"",
            "\"12\"",
            "\"NaN\"",
            "\"\\u0000\\u202e\\ud83d\\ude80<script>=1+1\"",
            "[]",
            "{}",
            "[[]]",
            "{\"x\":1}");

    private static final int MOST_COPIES = 300;
    private static final int LONGEST_TEXT = 3_000;

    private final Random random;

    Mutation(Random random) {
        this.random = random;
    }

    private record Place(JsonNode parent, String name, int index) {}

    /** Spoils one to three places of a tree. */
    byte[] ofTree(ObjectNode request) {
        ObjectNode spoilt = request.deepCopy();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            List<Place> places = new ArrayList<>();
            collect(spoilt, places);
            if (!places.isEmpty()) {
                spoil(places.get(random.nextInt(places.size())));
            }
        }
        return Json.exactBytes(spoilt);
    }

    private static void collect(JsonNode node, List<Place> places) {
        if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> {
                places.add(new Place(object, field.getKey(), -1));
                collect(field.getValue(), places);
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                places.add(new Place(list, null, i));
                collect(list.get(i), places);
            }
        }
    }

    private void spoil(Place place) {
        JsonNode value = read(VALUES.get(random.nextInt(VALUES.size())));
        if (place.parent() instanceof ObjectNode object) {
            switch (random.nextInt(6)) {
                case 0 -> object.remove(place.name());
                case 1 -> object.set(place.name() + "x", value);
                case 2 -> object.put(place.name(), "y".repeat(random.nextInt(LONGEST_TEXT)));
                default -> object.set(place.name(), value);
            }
        } else if (place.parent() instanceof ArrayNode list) {
            switch (random.nextInt(4)) {
                case 0 -> list.remove(place.index());
                case 1 -> {
                    JsonNode copied = list.get(place.index());
                    for (int i = random.nextInt(MOST_COPIES); i > 0; i--) {
                        list.add(copied.deepCopy());
                    }
                }
                default -> list.set(place.index(), value);
            }
        }
    }

    private static JsonNode read(String json) {
        try {
            return Json.MAPPER.readTree(json);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Cuts, doubles, swaps or changes bytes. */
    byte[] ofBytes(byte[] request) {
        byte[] spoilt = request.clone();
        int at = random.nextInt(spoilt.length);
        switch (random.nextInt(4)) {
            case 0 -> spoilt = Arrays.copyOf(spoilt, at);
            case 1 -> spoilt[at] = (byte) random.nextInt(256);
            case 2 -> {
                byte[] end = "\"},]{[:1e400".substring(random.nextInt(8)).getBytes(StandardCharsets.UTF_8);
                spoilt = Arrays.copyOf(spoilt, spoilt.length + end.length);
                System.arraycopy(end, 0, spoilt, spoilt.length - end.length, end.length);
            }
            default -> {
                int to = at + random.nextInt(spoilt.length - at);
                byte[] twice = Arrays.copyOf(spoilt, spoilt.length + to - at);
                System.arraycopy(spoilt, at, twice, to, spoilt.length - at);
                spoilt = twice;
            }
        }
        return spoilt;
    }
}
