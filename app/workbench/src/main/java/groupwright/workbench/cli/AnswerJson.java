package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Settings;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** Answers of the ledger as JSON. */
final class AnswerJson {
    private AnswerJson() {}

    /** A question with its answer; a band only where one is known, an exact number having one of no width. */
    static ObjectNode of(Ask ask, Answer answer, Band band) {
        ObjectNode node = JsonText.NODES.objectNode().put("figure", ask.figure().id());
        node.set("subject", subject(ask.subject()));
        node.set("parameters", parameters(ask.parameters()));
        addValue(node, answer);
        addBand(node, answer, band);
        return node.put("formulaVersion", ask.figure().version());
    }

    static ObjectNode subject(Subject subject) {
        ObjectNode node = JsonText.NODES.objectNode();
        for (Scope scope : Scope.values()) {
            subject.get(scope).ifPresent(id -> node.put(scope.name().toLowerCase(Locale.ROOT), id.text()));
        }
        return node;
    }

    private static ObjectNode parameters(Settings parameters) {
        ObjectNode node = JsonText.NODES.objectNode();
        parameters.values().forEach((name, value) -> node.set(name, parameter(value)));
        return node;
    }

    private static JsonNode parameter(String value) {
        return Settings.isNumber(value) ? DecimalNode.valueOf(new BigDecimal(value)) : JsonText.NODES.textNode(value);
    }

    /** Value and unit, or values, or what is missing. */
    static void addValue(ObjectNode node, Answer answer) {
        if (answer instanceof Quantity quantity) {
            node.set("value", JsonText.number(quantity.value()));
            node.put("unit", quantity.unit().symbol());
            addRemark(node, quantity.remark());
        } else if (answer instanceof Series series) {
            node.set("values", JsonText.list(series.values(), AnswerJson::at));
            node.put("unit", series.unit().symbol());
        } else if (answer instanceof Verdict verdict) {
            node.put("value", verdict.words()).put("unit", "");
        } else if (answer instanceof Word word) {
            node.put("value", word.word()).put("unit", "");
            addRemark(node, word.detail());
        } else if (answer instanceof Missing missing) {
            addMissing(node, missing.inputs());
        }
    }

    /** The first missing input, and the others if there are any. */
    static void addMissing(ObjectNode node, List<MissingInput> inputs) {
        node.set("missing", JsonText.missing(inputs.get(0)));
        if (inputs.size() > 1) {
            node.set("alsoMissing", JsonText.list(inputs.subList(1, inputs.size()), JsonText::missing));
        }
    }

    private static void addRemark(ObjectNode node, String remark) {
        if (!remark.isEmpty()) {
            node.put("remark", remark);
        }
    }

    private static ObjectNode at(Series.At at) {
        ObjectNode node = JsonText.NODES.objectNode().put("at", at.at());
        node.set("value", JsonText.number(at.value()));
        return node;
    }

    static void addBand(ObjectNode node, Answer answer, Band band) {
        if (answer instanceof Quantity quantity && !(band instanceof Band.NotStated)) {
            Band.Between ends = band instanceof Band.Between between
                    ? between
                    : new Band.Between(quantity.value(), quantity.value());
            ObjectNode limits = JsonText.NODES.objectNode();
            limits.set("low", JsonText.number(ends.low()));
            limits.set("high", JsonText.number(ends.high()));
            node.set("band", limits);
        }
    }
}
