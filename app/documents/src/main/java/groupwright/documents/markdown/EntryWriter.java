package groupwright.documents.markdown;

import groupwright.documents.labels.Labels;
import groupwright.documents.markdown.MarkdownText.Position;
import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.Issue;
import java.util.List;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.commonmark.renderer.markdown.MarkdownWriter;

/** Writes the title block and the entries of the last chapter. */
final class EntryWriter {
    private final Labels labels;
    private final Trace trace;

    EntryWriter(Labels labels, Trace trace) {
        this.labels = labels;
        this.trace = trace;
    }

    void title(Issue issue, MarkdownWriter writer) {
        writer.raw("# " + escape(issue.title()));
        writer.block();
        writer.pushTight(true);
        issue.facts(labels).forEach(fact -> item(fact.label(), escape(fact.value()), writer));
        writer.popTight();
        separate(writer);
    }

    void entry(NumberedEntry numbered, MarkdownWriter writer) {
        TraceEntry entry = numbered.entry();
        writer.raw("<a id=\"" + numbered.anchor() + "\"></a>**\\[" + numbered.number() + "\\] " + escape(entry.title())
                + ":** " + escape(entry.shown().text()));
        writer.block();
        writer.pushTight(true);
        item("trace.figure", code(entry.id()), entry.id(), writer);
        String version = labels.text("trace.versionNumber", Integer.toString(entry.formulaVersion()));
        item("trace.formula", escape(entry.formula()) + " (" + version + ")", entry.formula(), writer);
        inputs(entry.inputs(), writer);
        String restsOn = numbered.restsOn().stream().map(this::reference).collect(separated());
        item("trace.uses", restsOn, restsOn, writer);
        item("trace.band", escape(entry.band()), entry.band(), writer);
        item("trace.source", escape(entry.source()), entry.source(), writer);
        item("trace.leavesOut", escape(entry.leavesOut()), entry.leavesOut(), writer);
        String requirements = String.join(labels.text("list.separator"), entry.requirements());
        item("trace.requirements", escape(requirements), requirements, writer);

        item(labels.text("trace.shownAt"), places(numbered), writer);
        writer.popTight();
        separate(writer);
    }

    private void inputs(List<TraceInput> inputs, MarkdownWriter writer) {
        if (inputs.isEmpty()) {
            return;
        }
        writer.raw("- " + labels.text("trace.inputs") + ":");
        writer.block();
        for (TraceInput input : inputs) {
            String address = input.address().isEmpty() ? "" : " (" + code(input.address()) + ")";
            writer.raw("  - " + MarkdownText.escape(input.label(), Position.LINE_START) + ": "
                    + escape(input.shown().text()) + address);
            writer.block();
        }
    }

    private String reference(int number) {
        TraceEntry entry = trace.entry(number).entry();
        return escape(entry.title()) + ": " + escape(entry.shown().text()) + " [[" + number + "]](#"
                + Use.entryAnchor(number) + ")";
    }

    private String places(NumberedEntry numbered) {
        if (numbered.places() == 0) {
            return labels.text("trace.onlyThroughOthers");
        }
        return numbered.uses().stream()
                .map(use -> "[" + labels.text("trace.place", Integer.toString(use.occurrence())) + "](#" + use.anchor()
                        + ")")
                .collect(separated());
    }

    /** Links to every place where some numbers are shown. */
    String places(List<Integer> numbers) {
        String links = numbers.stream()
                .flatMap(number -> trace.entry(number).uses().stream())
                .map(use -> "[" + use.entry() + "." + use.occurrence() + "](#" + use.anchor() + ")")
                .collect(separated());
        return links.isEmpty() ? "—" : links;
    }

    private Collector<CharSequence, ?, String> separated() {
        return Collectors.joining(labels.text("list.separator"));
    }

    private void item(String key, String markdown, String unlessEmpty, MarkdownWriter writer) {
        if (!unlessEmpty.isBlank()) {
            item(labels.text(key), markdown, writer);
        }
    }

    private static void item(String label, String markdown, MarkdownWriter writer) {
        writer.raw("- " + escape(label) + ": " + markdown);
        writer.block();
    }

    /** Ends a tight list: the separator asked for last is the one that is written. */
    private static void separate(MarkdownWriter writer) {
        writer.block();
    }

    private static String code(String text) {
        String ticks = "`";
        while (text.contains(ticks)) {
            ticks += "`";
        }
        String pad = text.startsWith("`") || text.endsWith("`") ? " " : "";
        return ticks + pad + text + pad + ticks;
    }

    private static String escape(String text) {
        return MarkdownText.escape(text, Position.INSIDE);
    }
}
