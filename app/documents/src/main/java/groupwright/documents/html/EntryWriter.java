package groupwright.documents.html;

import groupwright.documents.html.Anchors.Section;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.LiveNumber;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Writes numbers, the entries they lead to, and the ways back. */
final class EntryWriter {
    private final Labels labels;
    private final Trace trace;
    private final Anchors anchors;

    EntryWriter(Labels labels, Trace trace, Anchors anchors) {
        this.labels = labels;
        this.trace = trace;
        this.anchors = anchors;
    }

    /** A number, which leads to its entry; the number of the entry stands behind it on paper only. */
    void number(LiveNumber number, Html html) {
        place(number.use(), number.shown().text(), html);
    }

    /** Leads to the entry of numbers that a drawing shows. */
    void mark(Use use, Html html) {
        place(use, "[" + use.entry() + "]", html);
    }

    private static void place(Use use, String text, Html html) {
        html.element(
                "a",
                text,
                "class",
                "number",
                "id",
                use.anchor(),
                "href",
                "#" + use.entryAnchor(),
                "data-entry",
                Integer.toString(use.entry()));
    }

    void entry(NumberedEntry numbered, Html html) {
        TraceEntry entry = numbered.entry();
        html.line().open("details", "class", "entry", "id", numbered.anchor()).line();
        html.open("summary")
                .element("span", Integer.toString(numbered.number()), "class", "index")
                .text(" ")
                .element("span", entry.title(), "class", "title")
                .text(" ")
                .element("span", entry.shown().text(), "class", "value");
        html.close("summary").line().open("dl").line();
        label("trace.figure", html)
                .open("dd")
                .element("code", entry.id())
                .close("dd")
                .line();
        formula(entry, html);
        inputs(entry.inputs(), html);
        restsOn(numbered, html);
        if (!entry.band().isBlank()) {
            label("trace.band", html)
                    .element("dd", entry.band(), "class", "band")
                    .line();
        }
        row("trace.source", entry.source(), html);
        row("trace.leavesOut", entry.leavesOut(), html);
        row("trace.requirements", String.join(labels.text("list.separator"), entry.requirements()), html);
        label("trace.shownAt", html).open("dd");
        if (numbered.places() == 0) {
            html.text(labels.text("trace.onlyThroughOthers"));
        } else {
            places(numbered.uses().iterator(), html);
        }
        html.close("dd").line().close("dl").line().close("details").line();
    }

    private void formula(TraceEntry entry, Html html) {
        if (!entry.formula().isBlank()) {
            String version = labels.text("trace.versionNumber", Integer.toString(entry.formulaVersion()));
            row("trace.formula", entry.formula() + " (" + version + ")", html);
        }
    }

    private void inputs(List<TraceInput> inputs, Html html) {
        if (inputs.isEmpty()) {
            return;
        }
        label("trace.inputs", html).open("dd").open("ul").line();
        for (TraceInput input : inputs) {
            html.open("li").text(input.label() + ": " + input.shown().text());
            if (!input.address().isEmpty()) {
                html.text(" ").element("code", input.address());
            }
            html.close("li").line();
        }
        html.close("ul").close("dd").line();
    }

    private void restsOn(NumberedEntry numbered, Html html) {
        if (numbered.restsOn().isEmpty()) {
            return;
        }
        label("trace.uses", html).open("dd").open("ul").line();
        for (int number : numbered.restsOn()) {
            TraceEntry used = trace.entry(number).entry();
            html.open("li")
                    .element("a", used.title() + ": " + used.shown().text(), "href", "#" + Use.entryAnchor(number))
                    .close("li")
                    .line();
        }
        html.close("ul").close("dd").line();
    }

    /** Links to every place where some numbers are shown. */
    void places(List<Integer> numbers, Html html) {
        List<Use> uses = numbers.stream()
                .flatMap(number -> trace.entry(number).uses().stream())
                .toList();
        if (uses.isEmpty()) {
            html.text("—");
        } else {
            places(uses.iterator(), html);
        }
    }

    /** The first place of a section in a row is named after it, further ones are counted. */
    private void places(Iterator<Use> uses, Html html) {
        Optional<Section> before = Optional.empty();
        int inSection = 0;
        while (uses.hasNext()) {
            Use use = uses.next();
            Optional<Section> section = anchors.sectionOf(use);
            if (inSection > 0) {
                html.text(labels.text("list.separator"));
            }
            inSection = inSection > 0 && section.equals(before) ? inSection + 1 : 1;
            String name = section.map(Section::title)
                    .filter(title -> !title.isBlank())
                    .orElse(labels.text("trace.place", "1"));
            html.element("a", inSection == 1 ? name : Integer.toString(inSection), "href", "#" + use.anchor());
            before = section;
        }
    }

    private void row(String key, String text, Html html) {
        if (!text.isBlank()) {
            label(key, html).element("dd", text).line();
        }
    }

    private Html label(String key, Html html) {
        return html.element("dt", labels.text(key));
    }
}
