package groupwright.benchmarks;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Shape;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.ProjectDocuments;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The sample with its requirements repeated until its specification fills about 300 pages. */
final class LargeDocument {
    /** Gives about 300 pages on A4; the benchmark says how many when it runs. */
    static final int REQUIREMENTS = 3000;

    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");

    private LargeDocument() {}

    static ProjectDocuments documents() {
        ProjectFiles files = ProjectFiles.read(SAMPLE);
        Definition sample = files.definition().orElseThrow();
        Ledger ledger = new Ledger(Catalogue.ofServices(), repeated(sample), 1000);
        return new ProjectDocuments(ledger, files, SAMPLE, new Reader(Locale.ENGLISH));
    }

    private static Definition repeated(Definition sample) {
        List<Requirement> given = sample.all(RecordKinds.REQUIREMENT);
        Definition all = sample;
        for (int i = given.size(); i < REQUIREMENTS; i++) {
            all = all.with(copy(given.get(i % given.size()), RecordId.of("R", i + 1)));
        }
        return all;
    }

    private static Entry copy(Requirement model, RecordId id) {
        Shape<Requirement> shape = Shape.of(Requirement.class);
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.value(model, i);
        }
        values[shape.indexOf("id")] = id;
        return shape.create(values);
    }
}
