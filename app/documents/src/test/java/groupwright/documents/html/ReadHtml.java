package groupwright.documents.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.DocumentTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A document as another library reads it, and what must hold for every one. */
record ReadHtml(DocumentTree tree, Document page, List<String> mistakes) {
    private static final Set<String> ADDRESSES =
            Set.of("src", "href", "srcset", "action", "data", "poster", "xlink:href");

    static ReadHtml of(DocumentTree tree) {
        Parser parser = Parser.htmlParser().setTrackErrors(20);
        Document page = Jsoup.parse(new HtmlRenderer().render(tree), "", parser);
        List<String> mistakes = new ArrayList<>();
        parser.getErrors().forEach(mistake -> mistakes.add(mistake.toString()));
        return new ReadHtml(tree, page, mistakes);
    }

    /** The part between head and script. */
    Element main() {
        return page.selectFirst("main");
    }

    void assertSound(String hint) {
        assertEquals(List.of(), mistakes, hint);
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), new TreeSet<>(ids).size(), hint + ": an id stands twice");
        for (String attribute : List.of("aria-labelledby", "aria-describedby")) {
            assertTrue(
                    ids.containsAll(page.select("[" + attribute + "]").eachAttr(attribute)), hint + ": " + attribute);
        }
        assertNumbersLeadThereAndBack(hint, ids);
        assertHeadingsAreInOrder(hint);
        page.select("thead tr > *:not(:empty)")
                .forEach(head -> assertEquals("col", head.attr("scope"), hint + ": " + head));
        page.select("tbody tr > th").forEach(head -> assertEquals("row", head.attr("scope"), hint + ": " + head));
        assertNothingIsFetched(hint);
        assertEquals(1, page.select("script").size(), hint);
        assertEquals(1, page.select("style").size(), hint);
    }

    private void assertNumbersLeadThereAndBack(String hint, List<String> ids) {
        for (Element number : page.select("a.number")) {
            assertTrue(ids.contains(number.attr("href").substring(1)), hint + ": " + number);
        }
        List<String> uses = new ArrayList<>();
        for (NumberedEntry entry : tree.trace().entries()) {
            List<String> places = entry.uses().stream().map(Use::anchor).toList();
            uses.addAll(places);
            List<String> links = page.getElementById(entry.anchor())
                    .select("dd:last-of-type a")
                    .eachAttr("href");
            assertEquals(places.stream().map(place -> "#" + place).toList(), links, hint + ", entry " + entry.number());
        }
        assertEquals(new TreeSet<>(uses), new TreeSet<>(page.select("a.number").eachAttr("id")), hint);
    }

    private void assertHeadingsAreInOrder(String hint) {
        int before = 0;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, hint + ": " + heading + " after level " + before);
            before = level;
        }
        assertEquals(1, page.select("h1").size(), hint);
    }

    private void assertNothingIsFetched(String hint) {
        for (Element element : page.getAllElements()) {
            element.attributes().forEach(attribute -> {
                assertTrue(!attribute.getKey().startsWith("on"), hint + ": " + element);
                assertTrue(!attribute.getKey().equals("style"), hint + ": " + element);
                boolean authors =
                        element.tagName().equals("a") && attribute.getKey().equals("href");
                assertTrue(
                        !ADDRESSES.contains(attribute.getKey())
                                || authors
                                || attribute.getValue().startsWith("#"),
                        hint + ": " + element);
            });
        }
        assertTrue(page.select("link, iframe, object, embed, img, base, form").isEmpty(), hint);
        assertTrue(!page.selectFirst("style").data().matches("(?s).*(url\\(|@import).*"), hint);
    }
}
