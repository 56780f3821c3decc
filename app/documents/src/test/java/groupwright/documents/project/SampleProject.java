package groupwright.documents.project;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.numbers.Reader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The sample project as blocks see it. */
final class SampleProject {
    static final Definition DEFINITION = ProjectFiles.read(Path.of("..", "..", "samples", "tarnbeck"))
            .definition()
            .orElseThrow();

    private SampleProject() {}

    /** Content about a definition in English. */
    static ProjectContent content(Definition definition) {
        return new ProjectContent(new Ledger(Catalogue.ofServices(), definition, 1000), new Reader(Locale.ENGLISH));
    }

    /** The rows of a table block as plain text; verdicts by name, numbers as shown. */
    static List<List<String>> rows(BlockAnswer answer) {
        return ((BlockAnswer.Table) answer)
                .rows().stream()
                        .map(row -> row.stream().map(SampleProject::text).toList())
                        .toList();
    }

    /** The items of a list block as plain text. */
    static List<String> items(BlockAnswer answer) {
        return ((BlockAnswer.Items) answer)
                .items().stream().map(SampleProject::text).toList();
    }

    /** The words of a paragraph. */
    static String words(BlockAnswer answer) {
        return text(((BlockAnswer.Paragraph) answer).phrase());
    }

    private static String text(Phrase phrase) {
        return phrase.parts().stream().map(SampleProject::text).collect(Collectors.joining());
    }

    private static String text(Inline part) {
        if (part instanceof Inline.Plain plain) {
            return plain.text();
        } else if (part instanceof Inline.Live live) {
            return live.shown().text();
        } else if (part instanceof Inline.Judged judged) {
            return judged.verdict().name();
        } else if (part instanceof Inline.Places places) {
            return "places of "
                    + places.entries().stream().map(entry -> entry.id()).collect(Collectors.joining(", "));
        }
        return "";
    }
}
