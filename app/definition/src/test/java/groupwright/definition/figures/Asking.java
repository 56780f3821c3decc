package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.interchange.RecordFile;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks figures in the figure grammar, about definitions written down in JSON. */
final class Asking {
    static final Catalogue CATALOGUE = Catalogue.ofServices();

    final Ledger ledger;

    Asking(Definition definition) {
        ledger = new Ledger(CATALOGUE, definition, 500);
    }

    /** A project of these records. */
    static Asking about(Entry... records) {
        List<Entry> others = new ArrayList<>(List.of(records));
        Project project = (Project) others.stream()
                .filter(Project.class::isInstance)
                .findFirst()
                .orElseGet(() -> record("project", "\"name\": \"Test\""));
        others.remove(project);
        return new Asking(Definition.of(project, others));
    }

    /** A record with these fields, as they would stand in its file. */
    static Entry record(String id, String fields) {
        RecordId parsed = RecordId.parse(id).orElseThrow();
        String title = id.equals("project") || fields.contains("\"title\"") ? "" : "\"title\": \"" + id + "\", ";
        String json = "{\"id\": \"" + id + "\", " + title + fields + "}";
        RecordFile.Outcome outcome = RecordFile.read(
                RecordKinds.of(parsed).orElseThrow(), id + ".json", parsed, json.getBytes(StandardCharsets.UTF_8));
        return outcome.record().orElseThrow(() -> new AssertionError(outcome.problems()));
    }

    Ask ask(String text) {
        return FigureText.parse(text).resolve(CATALOGUE, Optional.empty());
    }

    Answer answer(String text) {
        return ledger.ask(ask(text));
    }

    Quantity quantity(String text) {
        Answer answer = answer(text);
        if (answer instanceof Quantity quantity) {
            return quantity;
        }
        throw new AssertionError(text + " gave " + answer);
    }

    double value(String text) {
        return quantity(text).value();
    }

    Band band(String text) {
        return ledger.band(ask(text));
    }

    List<MissingInput> missing(String text) {
        Answer answer = answer(text);
        if (answer instanceof Missing missing) {
            return missing.inputs();
        }
        throw new AssertionError(text + " gave " + answer);
    }
}
