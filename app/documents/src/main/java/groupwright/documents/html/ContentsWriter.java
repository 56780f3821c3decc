package groupwright.documents.html;

import groupwright.documents.html.Anchors.Section;
import groupwright.documents.labels.Labels;
import java.util.List;
import org.commonmark.renderer.html.HtmlWriter;

/** Writes the table of contents: two levels of headings. */
final class ContentsWriter {
    private static final int TOP = 2;
    private static final int BELOW = 3;

    private final Labels labels;
    private final List<Section> sections;

    ContentsWriter(Labels labels, Anchors anchors) {
        this.labels = labels;
        this.sections = anchors.headings().stream()
                .filter(section -> section.level() <= BELOW)
                .toList();
    }

    String text() {
        StringBuilder text = new StringBuilder();
        Html html = new Html(new HtmlWriter(text));
        html.open("nav", "aria-label", labels.text("html.contents")).line();
        html.open("details", "open", "").element("summary", labels.text("html.contents"));
        html.line().open("ul").line();
        for (int i = 0; i < sections.size(); i++) {
            item(sections.get(i), i + 1 < sections.size() ? sections.get(i + 1).level() : TOP, html);
        }
        html.close("ul").line().close("details").line().close("nav").line();
        return text.toString();
    }

    private static void item(Section section, int nextLevel, Html html) {
        html.open("li").element("a", section.title(), "href", "#" + section.name());
        if (nextLevel > section.level()) {
            html.line().open("ul").line();
            return;
        }
        html.close("li").line();
        if (nextLevel < section.level()) {
            html.close("ul").close("li").line();
        }
    }
}
