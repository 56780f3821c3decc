package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.GearLadder;
import groupwright.documents.charts.SampleCharts;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.sample.RandomDocument;
import groupwright.documents.sample.Sample;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.DocumentTree;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is painted is what prints: the PDF, read by another library, is the measure. */
class PaintedDocumentTest {
    private static final FontShelf FONTS = new FontShelf();
    private static final PageGeometry A4 = PageGeometry.of(PaperSize.A4);
    /** PDF numbers are written with two decimals. */
    private static final double ROUNDING = 0.02;

    static Stream<Arguments> documents() {
        return Stream.concat(
                Stream.of(Arguments.of("the sample", Sample.document(Sample.TEMPLATE, Sample.tarnbeck()))),
                IntStream.range(0, 6).mapToObj(seed -> Arguments.of("seed " + seed, RandomDocument.of(seed))));
    }

    private static PaintedDocument painted(DocumentTree tree) {
        return PaintedDocument.of(tree, FONTS);
    }

    private static PaintedDocument painted(String template, Sample content) {
        return painted(Sample.document(template, content));
    }

    private static ReadPdf pdf(DocumentTree tree) throws IOException {
        return new ReadPdf(new PdfRenderer(FONTS).render(tree).bytes());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyNumberStandsWhereThePdfHasIt(String name, DocumentTree tree) throws IOException {
        PaintedDocument painted = painted(tree);
        List<Use> seen = new ArrayList<>();
        try (ReadPdf pdf = pdf(tree)) {
            assertEquals(pdf.document().getNumberOfPages(), painted.pageCount());
            for (int page = 0; page < painted.pageCount(); page++) {
                List<PaintedNumber> numbers = painted.numbersOn(page);
                List<String> there = pdf.regions(
                        page + 1,
                        numbers.stream()
                                .map(number -> withOverhang(number.area()))
                                .toList());
                for (int i = 0; i < numbers.size(); i++) {
                    PaintedNumber number = numbers.get(i);
                    assertEquals(number.shown(), there.get(i).strip(), name + ", page " + page + ", " + number.use());
                    seen.add(number.use());
                }
            }
        }
        List<Use> expected = tree.trace().entries().stream()
                .flatMap(entry -> entry.uses().stream())
                .toList();
        assertEquals(Set.copyOf(expected), Set.copyOf(seen), name);
        assertEquals(expected.size(), seen.size(), name);
    }

    /** A tabular 4 is a little wider than the room of a zero; the sign before a number is ten times that. */
    private static Rectangle2D withOverhang(Area area) {
        return new Rectangle2D.Double(area.x() - 0.3, area.y(), area.width() + 0.3, area.height());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void theOutlineIsThatOfThePdf(String name, DocumentTree tree) throws IOException {
        List<String> inPdf = new ArrayList<>();
        try (ReadPdf pdf = pdf(tree)) {
            collect(pdf.document().getDocumentCatalog().getDocumentOutline(), pdf, inPdf);
        }
        List<String> ours = painted(tree).outline().stream()
                .map(entry -> entry.title() + " on " + entry.page() + " at " + Math.round(entry.y()))
                .toList();
        assertEquals(inPdf, ours, name);
    }

    private static void collect(PDOutlineNode node, ReadPdf pdf, List<String> entries) throws IOException {
        for (PDOutlineItem item : node.children()) {
            PDPageFitWidthDestination place = (PDPageFitWidthDestination) item.getDestination();
            int page = pdf.document().getPages().indexOf(place.getPage());
            // the library gives whole points, cut off below
            entries.add(item.getTitle() + " on " + page + " at "
                    + Math.round(A4.height() - ((COSArray) place.getCOSObject()).toFloatArray()[2]));
            collect(item, pdf, entries);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void linksLeadWhereThoseOfThePdfLead(String name, DocumentTree tree) throws IOException {
        PaintedDocument painted = painted(tree);
        try (ReadPdf pdf = pdf(tree)) {
            for (int page = 0; page < painted.pageCount(); page++) {
                List<PageLink> inPdf = links(pdf, page);
                List<PageLink> ours = painted.linksOn(page);
                assertEquals(inPdf.size(), ours.size(), name + ", page " + page);
                for (int i = 0; i < ours.size(); i++) {
                    assertSame(inPdf.get(i), ours.get(i), name + ", page " + page);
                }
            }
        }
    }

    private static void assertSame(PageLink expected, PageLink found, String where) {
        assertEquals(expected.page(), found.page(), where);
        assertEquals(expected.y(), found.y(), 1, where); // the library cuts off below whole points
        assertEquals(expected.area().x(), found.area().x(), ROUNDING, where);
        assertEquals(expected.area().y(), found.area().y(), ROUNDING, where);
        assertEquals(expected.area().width(), found.area().width(), ROUNDING, where);
        assertEquals(expected.area().height(), found.area().height(), ROUNDING, where);
    }

    private static List<PageLink> links(ReadPdf pdf, int page) throws IOException {
        List<PageLink> links = new ArrayList<>();
        PDPage paper = pdf.document().getPage(page);
        for (PDAnnotation annotation : paper.getAnnotations()) {
            if (annotation instanceof PDAnnotationLink link && link.getAction() instanceof PDActionGoTo go) {
                PDPageXYZDestination place = (PDPageXYZDestination) go.getDestination();
                PDRectangle area = annotation.getRectangle();
                links.add(new PageLink(
                        new Area(
                                area.getLowerLeftX(),
                                A4.height() - area.getUpperRightY(),
                                area.getWidth(),
                                area.getHeight()),
                        pdf.document().getPages().indexOf(((PDPageDestination) place).getPage()),
                        A4.height() - place.getTop()));
            }
        }
        return links;
    }

    /**
     * Both pictures have 96 pixels an inch. Ink is compared in squares of 8 pixels and may differ by
     * 12 hundredths in each (11 were seen: where a line lies between two squares, and the other library puts it on the
     * nearest pixels), by 1 in a hundred on the page (half of that was seen).
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void thePictureHasTheInkOfThePrintedPage(String name, DocumentTree tree) throws IOException {
        PaintedDocument painted = painted(tree);
        try (ReadPdf pdf = pdf(tree)) {
            PDFRenderer renderer = new PDFRenderer(pdf.document());
            for (int page = 0; page < Math.min(2, painted.pageCount()); page++) {
                Ink expected = new Ink(renderer.renderImageWithDPI(page, 96, ImageType.RGB));
                Ink found = new Ink(Pictures.of(painted, page, 96 / 72.0, Set.of()));
                assertEquals(expected.total(), found.total(), 0.01 * expected.total(), name + ", page " + page);
                assertTrue(found.largestDifference(expected) < 0.12, name + ", page " + page);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void severalThreadsPaintTheSamePicture(String name, DocumentTree tree) {
        PaintedDocument painted = PaintedDocument.of(tree, new FontShelf()); // whose glyphs nobody has asked for
        List<BufferedImage> together = IntStream.range(0, 4)
                .parallel()
                .mapToObj(any -> Pictures.of(painted, 0, 1, Set.of()))
                .toList();
        Ink alone = new Ink(Pictures.of(painted, 0, 1, Set.of()));
        together.forEach(picture -> assertEquals(0, new Ink(picture).largestDifference(alone), name));
    }

    @Test
    void changedNumbersGetAPatchAndOthersDoNot() {
        PaintedDocument painted = painted(Sample.document(Sample.TEMPLATE, Sample.tarnbeck()));
        PaintedNumber changed = painted.numbersOn(0).get(1);
        BufferedImage plain = Pictures.of(painted, 0, 2, Set.of());
        BufferedImage marked = Pictures.of(painted, 0, 2, Set.of(changed.use()));
        Area patch = changed.area();
        int yellow = 0;
        for (int x = 0; x < plain.getWidth(); x++) {
            for (int y = 0; y < plain.getHeight(); y++) {
                boolean near = new Area(patch.x() - 4, patch.y() - 4, patch.width() + 8, patch.height() + 8)
                        .contains(x / 2.0, y / 2.0);
                boolean same = plain.getRGB(x, y) == marked.getRGB(x, y);
                assertTrue(near || same, "untouched at " + x + ", " + y);
                yellow += marked.getRGB(x, y) == Paper.CHANGED.getRGB() ? 1 : 0;
            }
        }
        assertTrue(
                yellow > patch.width() * patch.height(), "patch of " + yellow + " pixels"); // 4 pixels a square point
    }

    @Test
    void aNumberInATableHeadIsRepeatedWithItAndIsLinkedToWhereItFirstStands() throws IOException {
        String rows = "| row | row |\n".repeat(90);
        DocumentTree tree = Sample.document("| With {{ range }} | b |\n|---|---|\n" + rows, range("450"));
        PaintedDocument painted = painted(tree);
        assertEquals(1, painted.numbersOn(1).size());
        int last = painted.pageCount() - 1;
        try (ReadPdf pdf = pdf(tree)) {
            assertEquals(
                    links(pdf, last).get(0).page(), painted.linksOn(last).get(0).page());
            assertEquals(1, pdf.pageOf("u1-1"));
        }
        assertEquals(0, painted.linksOn(last).get(0).page());
    }

    private static Sample range(String value) {
        return Sample.empty()
                .with("range", TextAnswer.of(Inline.Live.of(Sample.entry("Range", "range C-1", "C-1", value, "%"))))
                .with("gears", TextAnswer.of(Inline.Live.of(Sample.entry("Gears", "gears C-1", "C-1", "12", ""))));
    }

    @Test
    void aNumberThatReadsOtherwiseChangedAtEachOfItsPlaces() {
        String template = "{{ range }} {{ gears }} {{ range }}\n";
        PaintedDocument before = painted(template, range("450"));
        assertEquals(Set.of(), painted(template, range("450")).changedSince(before));
        PaintedDocument after = painted(template, range("480"));
        assertEquals(Set.of(new Use(1, 1), new Use(1, 2)), after.changedSince(before));
    }

    @Test
    void placesThatMovedDidNotChangeAndNewQuestionsDid() {
        PaintedDocument before = painted("{{ gears }}\n", range("450"));
        PaintedDocument after = painted("{{ range }} and {{ gears }}, {{ gears }}\n", range("450"));
        assertEquals(Set.of(new Use(1, 1)), after.changedSince(before));
    }

    @Test
    void headingsKnowTheirLineInTheTemplateEvenFromRepeatedSections() {
        Sample content = Sample.empty().with("each", new BlockAnswer.Repeated(List.of(Sample.empty(), Sample.empty())));
        PaintedDocument painted = painted("# One\n\ntext\n\n```each\n\nwords\n\n## Two\n```\n\n### Three\n", content);
        assertEquals(
                List.of("1 One 1", "1.1 Two 9", "1.2 Two 9", "1.2.1 Three 12"),
                painted.outline().stream()
                        .filter(entry -> entry.line().isPresent())
                        .map(entry -> entry.title() + " " + entry.line().get())
                        .toList());
        assertEquals(
                Optional.empty(),
                painted.outline().get(painted.outline().size() - 1).line());
    }

    @Test
    void aHeadingCoversItsLinesAndNothingElse() {
        String broken = "A heading so long that it does not fit on one line of the text column".repeat(2);
        PaintedDocument painted = painted("# " + broken + "\n\n{{ gears }} gears\n", range("450"));
        PaintedHeading heading = painted.headingsOn(0).get(0);
        PaintedNumber below = painted.numbersOn(0).get(0);
        assertEquals(Optional.of(1), heading.line());
        assertEquals(PageGeometry.LEFT, heading.area().x(), 1e-9);
        assertEquals(PageGeometry.TEXT_WIDTH, heading.area().width(), 1e-9);
        double bottom = heading.area().y() + heading.area().height();
        assertTrue(bottom < below.area().y(), () -> bottom + " against " + below.area());
        assertTrue(inkOf(painted, heading.area(), 0) > 1, "its first line is in it");
        assertTrue(inkOf(painted, heading.area(), 0.5) > 1, "and so is its second");
    }

    /** Ink in the upper or lower half of an area of the first page, in squares of the picture. */
    private static double inkOf(PaintedDocument painted, Area area, double from) {
        return new Ink(Pictures.of(painted, 0, 1, Set.of())
                        .getSubimage((int) area.x(), (int) (area.y() + from * area.height()), (int) area.width(), (int)
                                (area.height() / 2)))
                .total();
    }

    @Test
    void warningsAreThoseOfThePdfForTextAndCharts() {
        GearLadder ladder = new GearLadder(
                "G-003",
                List.of(new GearLadder.Lane(SampleCharts.LEAD, "C-002", 11, List.of(1.0, 4.0))),
                List.of(new GearLadder.Need(2, "done \u2611")), // drawn, never measured alone
                Locale.ENGLISH);
        Sample content = Sample.empty()
                .with("lonely", new BlockAnswer.Items(List.of(Phrase.of("diameter \u2300 here"))))
                .with("ladder", new BlockAnswer.Drawing(ladder, List.of()));
        DocumentTree tree = Sample.document("```lonely\n```\n\n```ladder\nCaption\n```\n", content);
        List<String> warnings = painted(tree).warnings();
        assertEquals(new PdfRenderer(FONTS).render(tree).warnings(), warnings);
        assertEquals(2, warnings.size(), warnings.toString());
    }
}
