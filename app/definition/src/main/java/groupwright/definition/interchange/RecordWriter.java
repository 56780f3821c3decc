package groupwright.definition.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.Entry;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes records as JSON. What a file holds beyond the description stays, in its place; values that did not change keep
 * the text they had; fields that hold what a missing field means are left out of new files.
 */
public final class RecordWriter {
    private RecordWriter() {}

    /** The bytes of a new file. */
    public static byte[] write(Entry record) {
        return Json.bytes(tree(record, Json.NODES.objectNode()));
    }

    /**
     * The bytes of a changed file.
     *
     * @param base the bytes the file had; must be readable JSON
     */
    public static byte[] write(Entry record, byte[] base) {
        Parsed parsed = Parsed.parse("", base)
                .parsed()
                .orElseThrow(() -> new IllegalArgumentException("the base of " + record.id() + " is no JSON"));
        return Json.bytes(tree(record, (ObjectNode) parsed.root()));
    }

    private static ObjectNode tree(Entry record, ObjectNode base) {
        return object(RecordKinds.of(record.getClass()).shape(), record, base);
    }

    private static ObjectNode object(Shape<?> shape, Object record, ObjectNode base) {
        ObjectNode result = base.deepCopy();
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            Object value = shape.value(record, i);
            Optional<?> present = value instanceof Optional<?> optional ? optional : Optional.of(value);
            JsonNode old = base.get(component.name());
            if (present.isEmpty()) {
                result.remove(component.name());
            } else if (old != null || !isDefault(component, present.get())) {
                JsonNode was = old == null ? Json.NODES.missingNode() : old;
                result.set(component.name(), value(component.type(), present.get(), was));
            }
        }
        return result;
    }

    private static boolean isDefault(Component component, Object value) {
        return component
                .missing()
                .map(Json::ofConstant)
                .filter(usual ->
                        usual.equals(RecordWriter::sameValue, value(component.type(), value, Json.NODES.missingNode())))
                .isPresent();
    }

    /** 0 where two plain nodes say the same; 4 and 4.0 are one number, though their nodes are of different classes. */
    private static int sameValue(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return one.decimalValue().compareTo(other.decimalValue());
        }
        return one.equals(other) ? 0 : 1;
    }

    private static JsonNode value(FieldType type, Object value, JsonNode old) {
        if (type instanceof FieldType.ListOf list) {
            return list(list, (List<?>) value, old);
        } else if (type instanceof FieldType.Nested nested) {
            ObjectNode base = old instanceof ObjectNode object ? object : Json.NODES.objectNode();
            return object(nested.shape(), value, base);
        } else if (value instanceof Amount amount) {
            return amount(amount, old);
        } else if (value instanceof Integer whole) {
            return kept(old, Json.NODES.numberNode(whole));
        } else if (value instanceof Settings settings) {
            return settings(settings);
        } else if (value instanceof Enum<?> word) {
            return Json.NODES.textNode(ValueText.word(word));
        }
        return Json.NODES.textNode(value.toString()); // text, ids and dates
    }

    private static JsonNode list(FieldType.ListOf type, List<?> values, JsonNode old) {
        Map<String, JsonNode> oldById = new HashMap<>();
        List<JsonNode> oldInOrder = new ArrayList<>();
        for (JsonNode element : old) {
            oldInOrder.add(element);
            oldById.put(element.path("id").asText(""), element);
        }
        ArrayNode array = Json.NODES.arrayNode();
        for (int i = 0; i < values.size(); i++) {
            JsonNode was = i < oldInOrder.size() ? oldInOrder.get(i) : Json.NODES.missingNode();
            if (values.get(i) instanceof Item item) {
                was = oldById.getOrDefault(item.id(), Json.NODES.missingNode());
            }
            array.add(value(type.element(), values.get(i), was));
        }
        return array;
    }

    private static JsonNode amount(Amount amount, JsonNode old) {
        if (!amount.isBanded() && !old.isObject()) {
            return kept(old, number(amount.value()));
        }
        ObjectNode object = old instanceof ObjectNode was ? was.deepCopy() : Json.NODES.objectNode();
        object.set("value", kept(object.path("value"), number(amount.value())));
        if (amount.isBanded() || object.has("plusMinus")) {
            object.set("plusMinus", kept(object.path("plusMinus"), number(amount.plusMinus())));
        }
        return object;
    }

    /** The text a number had, where it still is that number. */
    private static JsonNode kept(JsonNode old, JsonNode now) {
        return old.isNumber() && old.doubleValue() == now.doubleValue() ? old : now;
    }

    private static JsonNode number(double value) {
        return Json.NODES.numberNode(new BigDecimal(ValueText.number(value)));
    }

    private static JsonNode settings(Settings settings) {
        ObjectNode object = Json.NODES.objectNode();
        settings.values().forEach((name, text) -> {
            if (Settings.isNumber(text)) {
                object.set(name, Json.NODES.numberNode(new BigDecimal(text)));
            } else {
                object.put(name, text);
            }
        });
        return object;
    }
}
