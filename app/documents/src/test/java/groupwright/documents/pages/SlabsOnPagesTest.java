package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.sample.RandomDocument;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.DocumentTree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every page of every document. */
class SlabsOnPagesTest {
    private static final FontShelf FONTS = new FontShelf();
    private static final double ROUNDING = 0.02;

    static Stream<Arguments> documents() {
        return IntStream.range(0, 25)
                .boxed()
                .flatMap(seed -> Stream.of(PaperSize.values()).map(paper -> Arguments.of(seed, paper)));
    }

    private static LaidOut laidOut(DocumentTree tree, PaperSize paper) {
        return LaidOut.of(tree, FONTS, paper);
    }

    @ParameterizedTest(name = "seed {0}, {1}")
    @MethodSource("documents")
    void slabsStandBelowEachOtherInsideTheBody(int seed, PaperSize paper) {
        LaidOut document = laidOut(RandomDocument.of(seed), paper);
        double bottom = PageGeometry.of(paper).bodyBottom();
        for (Page page : document.pages()) {
            assertBelowEachOther(page.slabs(), bottom, "seed " + seed);
            List<Page.Placed> notes = document.notes(page);
            assertBelowEachOther(notes, bottom, "notes, seed " + seed);
            for (Page.Placed note : notes) {
                assertFalse(
                        page.slabs().stream()
                                .filter(placed -> placed.slab().reach() == Slab.Reach.PAGE)
                                .anyMatch(placed -> overlap(placed, note)),
                        "a note on a wide table, seed " + seed);
            }
        }
    }

    private static void assertBelowEachOther(List<Page.Placed> slabs, double bottom, String where) {
        double free = PageGeometry.BODY_TOP - ROUNDING;
        for (Page.Placed placed : slabs) {
            assertTrue(placed.top() >= free, where + ": at " + placed.top() + ", free from " + free);
            free = placed.top() + placed.slab().height() - ROUNDING;
            assertTrue(free <= bottom, where + ": down to " + free);
        }
    }

    private static boolean overlap(Page.Placed one, Page.Placed other) {
        return one.top() < other.top() + other.slab().height() - ROUNDING
                && other.top() < one.top() + one.slab().height() - ROUNDING;
    }

    @ParameterizedTest(name = "seed {0}, {1}")
    @MethodSource("documents")
    void numbersStandInTheOrderOfTheDocumentAndNoneIsLost(int seed, PaperSize paper) {
        DocumentTree tree = RandomDocument.of(seed);
        Map<Integer, Integer> seen = new HashMap<>();
        for (Page page : laidOut(tree, paper).pages()) {
            for (Page.Placed placed : page.slabs()) {
                for (Slab.Sighting sighting : placed.slab().sightings()) {
                    Use use = sighting.use();
                    assertEquals(seen.getOrDefault(use.entry(), 0) + 1, use.occurrence(), "seed " + seed + ", " + use);
                    seen.put(use.entry(), use.occurrence());
                }
            }
        }
        tree.trace()
                .entries()
                .forEach(entry -> assertEquals(
                        entry.places(), seen.getOrDefault(entry.number(), 0), "seed " + seed + ", " + entry.number()));
    }

    @ParameterizedTest(name = "seed {0}, {1}")
    @MethodSource("documents")
    void noPageEndsWithWhatBelongsToTheNext(int seed, PaperSize paper) {
        List<List<Slab>> pages = laidOut(RandomDocument.of(seed), paper).pages().stream()
                .map(page -> page.slabs().stream().map(Page.Placed::slab).toList())
                .toList();
        List<OutlineEntry> outline =
                PaintedDocument.of(RandomDocument.of(seed), FONTS, paper).outline();
        int chapter = outline.get(outline.size() - 1).page(); // starts on a page of its own, whatever stands before
        for (int i = 0; i < chapter - 1; i++) {
            List<Slab> page = pages.get(i);
            if (page.get(page.size() - 1).keepsNext()) { // only what no page can hold may break
                double height = heightOfGroup(page) + firstGroup(pages.get(i + 1));
                assertTrue(height > PageGeometry.of(paper).bodyHeight(), "seed " + seed + ", " + height);
            }
        }
    }

    private static double heightOfGroup(List<Slab> page) {
        double height = 0;
        for (int i = page.size() - 1; i >= 0 && page.get(i).keepsNext(); i--) {
            height += page.get(i).before() + page.get(i).height();
        }
        return height;
    }

    private static double firstGroup(List<Slab> page) {
        int first = page.size() > 1 && page.get(1).head().equals(java.util.Optional.of(page.get(0))) ? 1 : 0;
        double height = page.get(first).height();
        for (int i = first; i < page.size() - 1 && page.get(i).keepsNext(); i++) {
            height += page.get(i + 1).before() + page.get(i + 1).height();
        }
        return height;
    }
}
