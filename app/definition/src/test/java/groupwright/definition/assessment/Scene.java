package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.interchange.RecordFile;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A project written down in JSON and a ledger that answers about it; an edit gives another scene. */
public final class Scene {
    /** The figures of the program. */
    public static final Catalogue CATALOGUE = Catalogue.ofServices();

    private static final int DEEPEST = 500;

    private final Catalogue catalogue;
    private final Ledger ledger;

    private Scene(Catalogue catalogue, Definition definition) {
        this.catalogue = catalogue;
        this.ledger = new Ledger(catalogue, definition, DEEPEST);
    }

    /** A project of these records; one without settings of its own has concept C-001 in the lead. */
    public static Scene of(Entry... records) {
        List<Entry> others = new ArrayList<>(List.of(records));
        Project project = (Project) others.stream()
                .filter(Project.class::isInstance)
                .findFirst()
                .orElseGet(() -> record("project", "\"name\": \"Test\", \"leadConcept\": \"C-001\""));
        others.remove(project);
        return new Scene(CATALOGUE, Definition.of(project, others));
    }

    /** The invented sample project. */
    public static Scene sample() {
        ProjectFiles files = ProjectFiles.read(Path.of("..", "..", "samples", "tarnbeck"));
        return new Scene(CATALOGUE, files.definition().orElseThrow());
    }

    /** A record with these fields, as they would stand in its file. */
    public static Entry record(String id, String fields) {
        RecordId parsed = RecordId.parse(id).orElseThrow();
        boolean titled = fields.contains("\"title\"")
                || !List.of("C", "G", "B", "R", "P").contains(parsed.letters());
        String json = "{\"id\": \"" + id + "\", " + (titled ? "" : "\"title\": \"" + id + "\", ") + fields + "}";
        RecordFile.Outcome outcome = RecordFile.read(
                RecordKinds.of(parsed).orElseThrow(), id + ".json", parsed, json.getBytes(StandardCharsets.UTF_8));
        return outcome.record().orElseThrow(() -> new AssertionError(outcome.problems()));
    }

    /** An agreed requirement with these fields beside the ones it must have. */
    public static Entry requirement(String id, String fields) {
        String state = fields.contains("\"state\"") ? "" : "\"state\": \"agreed\", ";
        return record(id, state + """
                "kind": "function", "statement": "It shall hold.", "verification": "analysis", """ + fields);
    }

    /** A criterion as it stands in a file; the figure may carry parameters, as in {@code test-result quantity=force}. */
    static String criterion(String id, String figure, String comparator, double target, String rest) {
        String[] words = figure.split(" ");
        StringBuilder parameters = new StringBuilder();
        for (int i = 1; i < words.length; i++) {
            parameters
                    .append(i == 1 ? "" : ", ")
                    .append('"')
                    .append(words[i].replace("=", "\": \""))
                    .append('"');
        }
        return """
                {"id": "%s", "figure": "%s", "parameters": {%s}, "comparator": "%s", "target": %s%s}""".formatted(id, words[0], parameters, comparator, target, rest.isEmpty() ? "" : ", " + rest);
    }

    /** The same project, answered about with other figures. */
    Scene under(Catalogue other) {
        return new Scene(other, definition());
    }

    /** Another project, answered about with the same figures. */
    public Scene at(Definition other) {
        return new Scene(catalogue, other);
    }

    /** With the value at an address replaced. */
    public Scene with(String address, Object value) {
        return at(definition().with(Address.parse(address).orElseThrow(), Optional.of(value)));
    }

    /** With a number at an address replaced. */
    public Scene with(String address, double number) {
        return with(address, Amount.of(number));
    }

    /** With a record added or replaced. */
    public Scene with(Entry record) {
        return at(definition().with(record));
    }

    /** With a record taken out. */
    public Scene without(String id) {
        return at(definition().without(id(id)));
    }

    public Definition definition() {
        return ledger.definition();
    }

    public Ledger ledger() {
        return ledger;
    }

    public Assessment assessment() {
        return new Assessment(ledger);
    }

    public Ask ask(String text) {
        return FigureText.parse(text).resolve(catalogue, definition().project().leadConcept());
    }

    public Answer answer(String text) {
        return ledger.ask(ask(text));
    }

    public Verdict verdict(String text) {
        return (Verdict) answer(text);
    }

    /** A verdict as its words and where, for example {@code misses C-001 G-002 k1}. */
    String worst(String text) {
        Verdict verdict = verdict(text);
        return verdict.words() + " " + verdict.at() + " " + verdict.criterion();
    }

    /** The one missing input of a verdict, for example {@code R-001.criteria.k1.unit: write …}. */
    String missing(String text) {
        var inputs = verdict(text).missing();
        if (inputs.size() != 1) {
            throw new AssertionError(text + " misses " + inputs);
        }
        return inputs.get(0).address() + ": " + inputs.get(0).remedy();
    }

    public Word claim(String id) {
        return (Word) answer("claim-state " + id);
    }

    public static RecordId id(String text) {
        return RecordId.parse(text).orElseThrow();
    }
}
