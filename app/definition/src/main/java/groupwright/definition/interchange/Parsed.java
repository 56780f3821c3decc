package groupwright.definition.interchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A JSON file as a tree, with the line and column of each value. */
final class Parsed {
    /** A place in a file, both from 1. */
    record Place(int line, int column) {
        static final Place UNKNOWN = new Place(0, 0);
    }

    /** No file at all, for values that come from elsewhere. */
    static final Parsed NOTHING = new Parsed(Json.NODES.missingNode(), Map.of());

    private final JsonNode root;
    private final Map<String, Place> places;

    private Parsed(JsonNode root, Map<String, Place> places) {
        this.root = root;
        this.places = places;
    }

    JsonNode root() {
        return root;
    }

    /** Where a value stands, or the nearest object around it; a path is like {@code /criteria/0/target}. */
    Place place(String path) {
        String at = path;
        while (!at.isEmpty()) {
            Place found = places.get(at);
            if (found != null) {
                return found;
            }
            at = at.substring(0, at.lastIndexOf('/'));
        }
        return places.getOrDefault("", Place.UNKNOWN);
    }

    /** What came of parsing: a tree, or the one problem that stopped it. */
    record Outcome(Optional<Parsed> parsed, Optional<Problem> problem) {}

    static Outcome parse(String file, byte[] bytes) {
        Map<String, Place> places = new HashMap<>();
        try (JsonParser parser = Json.MAPPER.createParser(bytes)) {
            if (parser.nextToken() == null) {
                return stopped(file, Place.UNKNOWN, "holds nothing", "restore it from a copy, or remove it");
            }
            JsonNode root = value(parser, "", places);
            if (parser.nextToken() != null) {
                return stopped(
                        file,
                        place(parser.currentTokenLocation()),
                        "goes on after the end of the record",
                        "remove the rest");
            }
            return new Outcome(Optional.of(new Parsed(root, places)), Optional.empty());
        } catch (JsonProcessingException broken) {
            return stopped(file, place(broken.getLocation()), wrong(broken), "mend the file at this place");
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading from memory failed", impossible);
        }
    }

    private static String wrong(JsonProcessingException broken) {
        String message = broken.getOriginalMessage();
        if (message.startsWith("Duplicate field")) {
            return "the field " + message.replaceAll(".*'(.*)'.*", "\"$1\"") + " stands twice";
        } else if (message.contains("nesting depth")) {
            return "objects and lists stand inside each other more than 100 levels deep";
        } else if (message.contains("end-of-input")) {
            return "the file ends too early, a bracket or quote is not closed";
        }
        String first = message.lines().findFirst().orElse("").replaceAll("\\s*\\(code \\d+[^)]*\\)", "");
        return "is no JSON: " + first;
    }

    private static Outcome stopped(String file, Place place, String wrong, String remedy) {
        return new Outcome(
                Optional.empty(), Optional.of(new Problem(file, place.line(), place.column(), "", "", wrong, remedy)));
    }

    private static Place place(JsonLocation location) {
        return location == null ? Place.UNKNOWN : new Place(location.getLineNr(), location.getColumnNr());
    }

    /** Recursion is bounded by the parser's own limit of 100 levels. */
    private static JsonNode value(JsonParser parser, String path, Map<String, Place> places) throws IOException {
        places.put(path, place(parser.currentTokenLocation()));
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            ObjectNode object = Json.NODES.objectNode();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                parser.nextToken();
                object.set(name, value(parser, path + "/" + name, places));
            }
            return object;
        } else if (parser.currentToken() == JsonToken.START_ARRAY) {
            ArrayNode array = Json.NODES.arrayNode();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                array.add(value(parser, path + "/" + array.size(), places));
            }
            return array;
        }
        return parser.readValueAsTree();
    }
}
