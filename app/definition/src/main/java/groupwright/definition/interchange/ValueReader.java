package groupwright.definition.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import groupwright.definition.figure.Nearest;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Makes values of JSON after their description, and collects everything that is wrong. */
final class ValueReader {
    private static final Map<Component, JsonNode> DEFAULTS = new ConcurrentHashMap<>();

    private final String file;
    private final String record;
    private final Parsed parsed;
    private final List<Problem> problems = new ArrayList<>();

    ValueReader(String file, String record, Parsed parsed) {
        this.file = file;
        this.record = record;
        this.parsed = parsed;
    }

    List<Problem> problems() {
        return problems;
    }

    /** An object of a described record; nothing where something in it was wrong. */
    <T> Optional<T> object(Shape<T> shape, JsonNode node, String path) {
        if (!node.isObject()) {
            report(path, shown(node) + " stands where an object belongs", "write { … }");
            return Optional.empty();
        }
        int before = problems.size();
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            field(shape, i, node, path).ifPresent(storeIn(values, i));
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        try {
            return Optional.of(shape.create(values));
        } catch (Invalid invalid) {
            report(path + pathOf(invalid.field()), invalid.wrong(), invalid.remedy());
            return Optional.empty();
        }
    }

    private static java.util.function.Consumer<Object> storeIn(Object[] values, int i) {
        return value -> values[i] = value;
    }

    private static String pathOf(String field) {
        return field.isEmpty() ? "" : "/" + field.replace('.', '/');
    }

    private Optional<Object> field(Shape<?> shape, int i, JsonNode object, String path) {
        Component component = shape.components().get(i);
        String at = path + "/" + component.name();
        JsonNode node = object.get(component.name());
        boolean optional = component.optional() == Component.Presence.OPTIONAL;
        if (node == null || node.isNull()) {
            if (optional) {
                return Optional.of(Optional.empty());
            } else if (component.missing().isEmpty()) {
                report(
                        at,
                        "is missing",
                        "add \"" + component.name() + "\": " + sample(component.type())
                                + likely(shape, object, component));
                return Optional.empty();
            }
            node = DEFAULTS.computeIfAbsent(
                    component, c -> Json.ofConstant(c.missing().orElseThrow()));
        }
        Optional<Object> value = value(component.type(), node, at);
        try {
            value.ifPresent(v -> shape.check(i, v));
        } catch (Invalid invalid) {
            report(path + pathOf(invalid.field()), invalid.wrong(), invalid.remedy());
            return Optional.empty();
        }
        return optional ? value.map(Optional::of) : value;
    }

    /** A hint where the missing field stands under a name almost the same. */
    private static String likely(Shape<?> shape, JsonNode object, Component missing) {
        List<String> unknown = new ArrayList<>();
        object.fieldNames().forEachRemaining(name -> {
            if (shape.indexOf(name) < 0) {
                unknown.add(name);
            }
        });
        return Nearest.of(missing.name(), unknown)
                .map(name -> " (the file has \"" + name + "\")")
                .orElse("");
    }

    /** The value of a default, which is known to be good. */
    Object usual(FieldType type, JsonNode node) {
        return value(type, node, "").orElseThrow();
    }

    private Optional<Object> value(FieldType type, JsonNode node, String path) {
        if (type instanceof FieldType.Text) {
            return node.isTextual() ? Optional.of(node.textValue()) : mismatch(type, node, path);
        } else if (type instanceof FieldType.Whole) {
            return node.isNumber() && node.decimalValue().stripTrailingZeros().scale() <= 0 && node.canConvertToInt()
                    ? Optional.of(node.intValue())
                    : mismatch(type, node, path);
        } else if (type instanceof FieldType.Number) {
            return number(node, path);
        } else if (type instanceof FieldType.Choice choice) {
            return choice(choice, node, path);
        } else if (type instanceof FieldType.Day) {
            return day(node, path);
        } else if (type instanceof FieldType.OwnId || type instanceof FieldType.Reference) {
            Optional<RecordId> id = node.isTextual() ? RecordId.parse(node.textValue()) : Optional.empty();
            return id.isPresent() ? Optional.of(id.get()) : mismatch(type, node, path);
        } else if (type instanceof FieldType.Parameters) {
            return parameters(node, path);
        } else if (type instanceof FieldType.ListOf list) {
            return list(list, node, path);
        }
        return object(((FieldType.Nested) type).shape(), node, path).map(Object.class::cast);
    }

    private Optional<Object> mismatch(FieldType type, JsonNode node, String path) {
        report(path, shown(node) + " is " + Wording.isNot(type), "write for example " + sample(type));
        return Optional.empty();
    }

    private static String sample(FieldType type) {
        return Wording.sample(type);
    }

    private Optional<Object> number(JsonNode node, String path) {
        if (node.isNumber() && Double.isFinite(node.doubleValue())) {
            return Optional.of(Amount.of(node.doubleValue()));
        }
        if (!node.isObject()) {
            return mismatch(new FieldType.Number(), node, path);
        }
        JsonNode value = node.path("value");
        JsonNode plusMinus = node.path("plusMinus");
        if (!value.isNumber() || !(plusMinus.isNumber() || plusMinus.isMissingNode())) {
            report(path, "is no number with a band", "write for example {\"value\": 50, \"plusMinus\": 2}");
            return Optional.empty();
        }
        try {
            return Optional.of(new Amount(value.doubleValue(), plusMinus.asDouble(0)));
        } catch (IllegalArgumentException refused) {
            report(path, refused.getMessage(), "write for example {\"value\": 50, \"plusMinus\": 2}");
            return Optional.empty();
        }
    }

    private Optional<Object> choice(FieldType.Choice choice, JsonNode node, String path) {
        List<String> words = Arrays.stream(choice.type().getEnumConstants())
                .map(ValueText::word)
                .toList();
        int at = words.indexOf(node.textValue());
        if (at >= 0) {
            return Optional.of(choice.type().getEnumConstants()[at]);
        }
        report(path, shown(node) + " is none of the words allowed", "write " + String.join(", ", words));
        return Optional.empty();
    }

    private Optional<Object> day(JsonNode node, String path) {
        try {
            return Optional.of(LocalDate.parse(node.asText()));
        } catch (DateTimeException refused) {
            return mismatch(new FieldType.Day(), node, path);
        }
    }

    private Optional<Object> parameters(JsonNode node, String path) {
        if (!node.isObject()) {
            return mismatch(new FieldType.Parameters(), node, path);
        }
        TreeMap<String, String> values = new TreeMap<>();
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            values.put(
                    entry.getKey(),
                    entry.getValue().isNumber()
                            ? entry.getValue().decimalValue().toPlainString()
                            : entry.getValue().asText());
        }
        try {
            return Optional.of(new Settings(values));
        } catch (Invalid invalid) {
            report(path, invalid.wrong(), invalid.remedy());
            return Optional.empty();
        }
    }

    private Optional<Object> list(FieldType.ListOf type, JsonNode node, String path) {
        if (!node.isArray()) {
            return mismatch(type, node, path);
        }
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            value(type.element(), node.get(i), path + "/" + i).ifPresent(values::add);
        }
        return values.size() == node.size() ? Optional.of(List.copyOf(values)) : Optional.empty();
    }

    private static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() <= 40 ? text : text.substring(0, 37) + "…";
    }

    private void report(String path, String wrong, String remedy) {
        Parsed.Place place = parsed.place(path);
        String field = addressOf(path);
        problems.add(new Problem(file, place.line(), place.column(), record, field, wrong, remedy));
    }

    /** A path as it stands in addresses: objects in lists by their ids, not by their positions. */
    private String addressOf(String path) {
        StringBuilder address = new StringBuilder();
        JsonNode at = parsed.root();
        for (String name : path.split("/")) {
            if (name.isEmpty()) {
                continue;
            }
            boolean position = at.isArray() && name.matches("[0-9]+");
            at = position ? at.path(Integer.parseInt(name)) : at.path(name);
            address.append(address.isEmpty() ? "" : ".")
                    .append(position ? at.path("id").asText(name) : name);
        }
        return address.toString();
    }
}
