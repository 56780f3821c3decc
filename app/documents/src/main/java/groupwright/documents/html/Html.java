package groupwright.documents.html;

import java.util.LinkedHashMap;
import java.util.Map;
import org.commonmark.renderer.html.HtmlWriter;

/** Writes tags; everything between and inside them is escaped. */
final class Html {
    private final HtmlWriter writer;

    Html(HtmlWriter writer) {
        this.writer = writer;
    }

    /** Opens an element; attributes are names and values in turn. */
    Html open(String element, String... attributes) {
        writer.tag(element, attributes(attributes));
        return this;
    }

    /** An element of HTML that has no content. */
    Html empty(String element, String... attributes) {
        writer.tag(element, attributes(attributes));
        return this;
    }

    /** An element of a drawing that has no content. */
    Html shape(String element, String... attributes) {
        writer.tag(element, attributes(attributes), true);
        return this;
    }

    Html close(String element) {
        writer.tag("/" + element);
        return this;
    }

    Html text(String text) {
        writer.text(visible(text));
        return this;
    }

    /** An element that holds one text. */
    Html element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close(element);
    }

    /** Begins a new line unless one has begun. */
    Html line() {
        writer.line();
        return this;
    }

    /** HTML knows no control signs; nobody shall believe that a text ends where one stands. */
    private static String visible(String text) {
        return text.replaceAll("[\\p{Cntrl}&&[^\\t\\n]]", "\uFFFD");
    }

    private static Map<String, String> attributes(String... namesAndValues) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            attributes.put(namesAndValues[i], visible(namesAndValues[i + 1]));
        }
        return attributes;
    }
}
