package groupwright.documents.project;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.numbers.Reader;
import groupwright.documents.sample.Sample;
import groupwright.documents.template.DocumentBuilder;
import groupwright.documents.template.Expansion;
import groupwright.documents.template.Problem;
import groupwright.documents.template.Template;
import groupwright.documents.tree.DocumentTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Fills templates from a project for tests. */
record Bench(Ledger ledger) {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");

    static Definition sampleDefinition() {
        return ProjectFiles.read(SAMPLE).definition().orElseThrow();
    }

    static Bench sample() {
        return of(sampleDefinition());
    }

    static Bench of(Definition definition) {
        return new Bench(new Ledger(Catalogue.ofServices(), definition, 1000));
    }

    Expansion expand(String template) {
        return new DocumentBuilder()
                .build(
                        new Template("t.md", template),
                        new ProjectContent(ledger, new Reader(Locale.ENGLISH)),
                        Sample.issue());
    }

    DocumentTree document(String template) {
        if (expand(template) instanceof Expansion.Complete complete) {
            return complete.document();
        }
        throw new AssertionError(sentences(template));
    }

    List<String> sentences(String template) {
        return expand(template) instanceof Expansion.Refused refused
                ? refused.problems().stream().map(Problem::sentence).toList()
                : List.of();
    }

    /** The template's own content without title block, annex and the marks of live numbers. */
    String body(String template) {
        String whole = new MarkdownRenderer().render(document(template));
        String hash = Sample.issue().contentHash();
        return whole.substring(whole.indexOf(hash) + hash.length(), whole.indexOf("# Annex A"))
                .replaceAll("<a id=\"[^\"]*\"></a>", "")
                .replaceAll("\\[\\[\\d+]]\\(#[^)]*\\)", "")
                .replaceAll("<sup>.*?</sup>", "")
                .replace("\\", "")
                .strip();
    }
}
