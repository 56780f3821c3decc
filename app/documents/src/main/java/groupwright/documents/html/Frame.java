package groupwright.documents.html;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Issue;
import java.text.DecimalFormatSymbols;
import org.commonmark.renderer.html.HtmlWriter;

/** The file around the text: head, policy, style, script. */
final class Frame {
    private static final Enclosed STYLE = Enclosed.read("document.css");
    private static final Enclosed SCRIPT = Enclosed.read("document.js");

    private final Issue issue;
    private final Labels labels;

    Frame(Issue issue, Labels labels) {
        this.issue = issue;
        this.labels = labels;
    }

    String around(String contents, String body) {
        StringBuilder text = new StringBuilder("<!DOCTYPE html>\n");
        HtmlWriter writer = new HtmlWriter(text);
        Html html = new Html(writer);
        char decimal = DecimalFormatSymbols.getInstance(issue.locale()).getDecimalSeparator();
        html.open(
                        "html",
                        "lang",
                        issue.locale().toLanguageTag(),
                        "data-decimal",
                        Character.toString(decimal),
                        "data-filter",
                        labels.text("html.filter"),
                        "data-filter-of",
                        labels.text("html.filterOf", "{0}"),
                        "data-shown",
                        labels.text("html.shown", "{0}", "{1}"))
                .line();
        head(html, writer);
        html.open("body").line();
        html.element("a", labels.text("html.skip"), "class", "skip", "href", "#text")
                .line();
        writer.raw(contents);
        html.line().open("main", "id", "text").line();
        writer.raw(body);
        html.line().close("main").line();
        html.open("script");
        writer.raw(SCRIPT.text());
        html.close("script").line().close("body").line().close("html").line();
        return text.toString();
    }

    private void head(Html html, HtmlWriter writer) {
        html.open("head").line();
        html.empty("meta", "charset", "utf-8").line();
        html.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy())
                .line();
        html.empty("meta", "name", "referrer", "content", "no-referrer").line();
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        html.element("title", issue.title() + " – " + issue.project()).line();
        html.open("style");
        writer.raw(STYLE.text());
        html.close("style").line().close("head").line();
    }

    private static String policy() {
        return "default-src 'none'; style-src " + STYLE.hash() + "; script-src " + SCRIPT.hash()
                + "; img-src data:; base-uri 'none'; form-action 'none'";
    }
}
