package groupwright.workbench;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import java.nio.file.Path;
import java.util.Optional;

/** The sample project in memory. */
public final class Sample {
    public static final Path FOLDER = Path.of("../../samples/tarnbeck");
    private static final Definition DEFINITION =
            ProjectFiles.read(FOLDER).definition().orElseThrow();
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    private Sample() {}

    public static Definition definition() {
        return DEFINITION;
    }

    /** A ledger of its own; its questions do not stand deeper than a test's stack. */
    public static Ledger ledger() {
        return new Ledger(CATALOGUE, DEFINITION, 500);
    }

    public static Ask ask(String text) {
        return FigureText.parse(text).resolve(CATALOGUE, DEFINITION.project().leadConcept());
    }

    public static Definition with(String address, Object value) {
        return DEFINITION.with(Address.parse(address).orElseThrow(), Optional.of(value));
    }

    public static RecordId id(String text) {
        return RecordId.parse(text).orElseThrow();
    }
}
