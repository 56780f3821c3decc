package groupwright.workbench.workings;

import groupwright.workbench.look.Words;
import groupwright.workbench.workings.WorkingsSheet.Changed;
import groupwright.workbench.workings.WorkingsSheet.Link;
import groupwright.workbench.workings.WorkingsSheet.Nowhere;
import groupwright.workbench.workings.WorkingsSheet.Step;
import groupwright.workbench.workings.WorkingsSheet.There;
import groupwright.workbench.workings.WorkingsSheet.ToDocument;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The last pins of the way from need to page: the documents a number stands in. */
public final class PageLinks {
    private PageLinks() {}

    /** While the documents are not made yet. */
    public static List<Link> looking(Locale locale) {
        return nothing(locale, "chain.findingPages");
    }

    /** @param titles of the documents by their names */
    public static List<Link> of(Map<String, String> titles, Locale locale) {
        if (titles.isEmpty()) {
            return nothing(locale, "chain.noPage");
        }
        return titles.entrySet().stream()
                .map(document -> new Link(
                        Step.PAGE, document.getValue(), new ToDocument(document.getKey()), There.SOMETHING, Changed.NO))
                .toList();
    }

    private static List<Link> nothing(Locale locale, String key) {
        String words = Words.of(PageLinks.class, locale).text(key);
        return List.of(new Link(Step.PAGE, words, new Nowhere(), There.NOTHING_YET, Changed.NO));
    }
}
