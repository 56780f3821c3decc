package groupwright.documents.html;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Issue;

/** Writes what a document says about itself. */
final class TitleWriter {
    private final Labels labels;

    TitleWriter(Labels labels) {
        this.labels = labels;
    }

    void write(Issue issue, Html html) {
        html.line().open("header").line();
        html.element("h1", issue.title()).line();
        html.open("dl", "class", "facts").line();
        issue.facts(labels)
                .forEach(fact -> html.open("div")
                        .element("dt", fact.label())
                        .element("dd", fact.value())
                        .close("div")
                        .line());
        html.close("dl").line().close("header").line();
    }
}
