package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.sample.Sample;
import groupwright.documents.trace.ShownValue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;

class PdfRendererTest {
    private static final PdfRenderer RENDERER = new PdfRenderer();

    private static RenderedPdf render(String template, Sample content) {
        return RENDERER.render(Sample.document(template, content));
    }

    private static ReadPdf read(String template, Sample content) throws IOException {
        return new ReadPdf(render(template, content).bytes());
    }

    @Test
    void theTextReadsInOrderWithRealSpaces() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            String first = pdf.bodyText(1);
            assertTrue(
                    first.contains("The gear range shall be at least 480 %. C-002 gives 450\u202F% 1 and misses"),
                    first);
            assertTrue(first.contains("4.1  Range"), first);
            assertTrue(
                    pdf.bodyText(2).contains("R-016 It fits the six listed bikes at least 6 mm missing input"),
                    pdf.bodyText(2));
        }
    }

    @Test
    void headAndFootNameProjectDocumentAndPage() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            int pages = pdf.document().getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                String text = pdf.text(page);
                assertTrue(text.startsWith("Tarnbeck Specification draft 7 since milestone M-002"), text);
                assertTrue(text.contains("page " + page + " of " + pages), text);
            }
        }
    }

    @Test
    void theOutlineHoldsTheHeadings() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            List<String> titles = new ArrayList<>();
            titles(pdf.document().getDocumentCatalog().getDocumentOutline(), "", titles);
            assertEquals(
                    List.of(
                            "4 Gearing",
                            "> 4.1 Range",
                            "> 4.2 Steps",
                            "> 4.3 What this section asks",
                            "> 4.4 What is still open",
                            "> 4.5 Riders' words",
                            "Annex A: Where the numbers come from"),
                    titles);
        }
    }

    private static void titles(PDOutlineNode node, String indent, List<String> titles) {
        for (PDOutlineItem item : node.children()) {
            titles.add(indent + item.getTitle());
            titles(item, indent + "> ", titles);
        }
    }

    @Test
    void everyNumberLeadsToItsEntryAndTheEntryBack() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            Set<String> fromFirst = pdf.linksOn(1);
            assertTrue(fromFirst.containsAll(Set.of("n1", "n2", "n3", "n4", "n5", "n16")), fromFirst.toString());
            assertEquals(3, pdf.pageOf("n1"));
            Set<String> fromEntries = pdf.linksOn(3);
            assertTrue(fromEntries.containsAll(Set.of("u1-1", "u1-2", "u2-1")), fromEntries.toString());
            assertEquals(1, pdf.pageOf("u1-1"));
            assertEquals(2, pdf.pageOf("u1-2"));
            assertTrue(pdf.text(3).contains("Shown on page 1, 2"), pdf.text(3));
        }
    }

    @Test
    void allFontsAreEmbeddedAndSubset() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            Set<String> names = new HashSet<>();
            for (PDPage page : pdf.document().getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded() && font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
                    names.add(font.getName());
                }
            }
            assertEquals(5, names.size(), names.toString()); // two weights, each with tabular digits too, and code
        }
    }

    @Test
    void digitsInTablesAllAdvanceLikeTheZero() throws IOException {
        Sample content = Sample.empty()
                .with(
                        "t",
                        new BlockAnswer.Table(List.of(Column.number("H")), List.of(List.of(Phrase.of("0123456789")))));
        try (ReadPdf pdf = read("```t\n```\n", content)) {
            List<Double> advances = pdf.advances(1, "0123456789");
            assertEquals(10, advances.size());
            assertEquals(1, new HashSet<>(advances).size(), advances.toString());
        }
    }

    @Test
    void theFileSaysWhatItIs() throws IOException {
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            assertEquals(
                    "Specification, Tarnbeck",
                    pdf.document().getDocumentInformation().getTitle());
            assertEquals(
                    Sample.issue().company(),
                    pdf.document().getDocumentInformation().getAuthor());
            assertEquals("en", pdf.document().getDocumentCatalog().getLanguage());
            assertEquals(
                    Sample.issue().date(),
                    pdf.document()
                            .getDocumentInformation()
                            .getCreationDate()
                            .toInstant()
                            .atZone(java.time.ZoneOffset.UTC)
                            .toLocalDate());
            assertEquals(
                    210 / 25.4 * 72, pdf.document().getPage(0).getMediaBox().getWidth(), 0.01);
        }
    }

    @Test
    void equalDocumentsGiveEqualBytesAndOthersAnotherIdentifier() {
        byte[] once = render(Sample.TEMPLATE, Sample.tarnbeck()).bytes();
        assertArrayEquals(once, render(Sample.TEMPLATE, Sample.tarnbeck()).bytes(), "a renderer used before");
        RenderedPdf fresh = new PdfRenderer().render(Sample.document(Sample.TEMPLATE, Sample.tarnbeck()));
        assertArrayEquals(once, fresh.bytes(), "a new renderer");
        byte[] other = render(Sample.TEMPLATE + "\nMore.\n", Sample.tarnbeck()).bytes();
        assertNotEquals(identifier(once), identifier(other));
        assertFalse(identifier(once).contains("0000000000"), identifier(once));
    }

    private static String identifier(byte[] file) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        return text.substring(text.lastIndexOf("/ID"), text.lastIndexOf("/ID") + 80);
    }

    @Test
    void aLongTableSplitsAndRepeatsItsHeadAndLosesNoRow() throws IOException {
        List<List<Phrase>> rows = IntStream.rangeClosed(1, 2000)
                .mapToObj(i -> List.of(Phrase.of("row-" + i), Phrase.of("text " + i)))
                .toList();
        Sample content = Sample.empty()
                .with("t", new BlockAnswer.Table(List.of(Column.text("HeadOne"), Column.text("HeadTwo")), rows));
        try (ReadPdf pdf = read("```t\nCaption\n```\n", content)) {
            int tablePages = pdf.document().getNumberOfPages() - 1;
            assertTrue(tablePages > 30, "pages " + tablePages);
            Set<String> seen = new HashSet<>();
            for (int page = 1; page <= tablePages; page++) {
                String text = pdf.bodyText(page);
                assertEquals(2, text.split("HeadOne HeadTwo", -1).length, "page " + page);
                ReadPdf.words(text).stream()
                        .filter(word -> word.startsWith("row-"))
                        .forEach(seen::add);
            }
            assertEquals(2000, seen.size());
        }
    }

    @Test
    void aShortTableStaysOnOnePage() throws IOException {
        List<List<Phrase>> rows = Collections.nCopies(15, List.of(Phrase.of("cell")));
        Sample content = Sample.empty().with("t", new BlockAnswer.Table(List.of(Column.text("Head")), rows));
        for (int lines = 24; lines < 44; lines += 3) {
            try (ReadPdf pdf = read("x\n\n".repeat(lines) + "# Title\n\n```t\nCaption\n```\n", content)) {
                int titlePage = pdf.bodyText(1).contains("Title") ? 1 : 2;
                String text = pdf.bodyText(titlePage);
                assertEquals(16, text.split("cell", -1).length, "after " + lines + " paragraphs");
            }
        }
    }

    @Test
    void aChapterBehindARuleStartsAPageOthersDoNot() throws IOException {
        try (ReadPdf pdf = read("x\n\n# One\n\ny\n\n---\n\n# Two\n\nz\n\n---\n\nw\n", Sample.empty())) {
            assertTrue(pdf.bodyText(1).contains("One") && !pdf.bodyText(1).contains("Two"), pdf.bodyText(1));
            assertTrue(pdf.bodyText(2).contains("Two") && pdf.bodyText(2).contains("w"), pdf.bodyText(2));
        }
    }

    @Test
    void aRowTallerThanAPageGoesOnWithItsHead() throws IOException {
        String words = String.join(" ", Collections.nCopies(3000, "word"));
        Sample content = Sample.empty()
                .with(
                        "t",
                        new BlockAnswer.Table(
                                List.of(Column.text("A"), Column.text("Head")),
                                List.of(List.of(Phrase.of("a"), Phrase.of(words)))));
        try (ReadPdf pdf = read("```t\n```\n", content)) {
            int count = 0;
            for (int page = 1; page < pdf.document().getNumberOfPages(); page++) {
                count += pdf.bodyText(page).split("word", -1).length - 1;
            }
            assertEquals(3000, count);
        }
    }

    @Test
    void aSignWithoutGlyphIsShownAsItsNumberAndReported() throws IOException {
        Sample content = Sample.empty().with("x", TextAnswer.of(new Inline.Plain("a \u2300 b \uD83D\uDEB2 c \u2208")));
        RenderedPdf rendered = render("{{ x }}", content);
        assertEquals(2, rendered.warnings().size(), rendered.warnings().toString()); // the code font has the last sign
        assertTrue(
                rendered.warnings().get(0).startsWith("The sign U+2300 has no glyph"),
                rendered.warnings().get(0));
        try (ReadPdf pdf = new ReadPdf(rendered.bytes())) {
            assertTrue(pdf.bodyText(1).contains("a [U+2300] b [U+1F6B2] c \u2208"), pdf.bodyText(1));
        }
    }

    @Test
    void aWarningQuotesWhatStandsAroundTheSignAndEachSignWarnsOnce() throws IOException {
        String climb = "the climb from the valley up to the old quarry, ";
        Sample content = Sample.empty()
                .with("x", TextAnswer.of(new Inline.Plain(climb + "axle \u2300 12 and \u7532\u7532 there")))
                .with("y", TextAnswer.of(new Inline.Plain("e\u0301 and q\u20E3 and \u2300")));
        RenderedPdf rendered = render("{{ x }} {{ y }}", content);
        assertEquals(3, rendered.warnings().size(), rendered.warnings().toString());
        assertTrue(
                rendered.warnings().get(0).contains("old quarry, axle \u2300 12 and"),
                rendered.warnings().get(0));
        try (ReadPdf pdf = new ReadPdf(rendered.bytes())) {
            String text = pdf.bodyText(1).replaceAll("\\s+", " ");
            assertTrue(text.contains("axle [U+2300] 12 and [U+7532][U+7532] there"), text);
            assertTrue(text.contains("\u00E9 and q[U+20E3] and [U+2300]"), text); // letter and accent are one sign
        }
    }

    @Test
    void everyPageOfADraftSaysSoWithItsContentAndOtherStatesStandPlain() throws IOException {
        String hash = Sample.issue().contentHash().substring(0, 12);
        try (ReadPdf pdf = read(Sample.TEMPLATE, Sample.tarnbeck())) {
            for (int page = 1; page <= pdf.document().getNumberOfPages(); page++) {
                String text = pdf.text(page);
                assertTrue(text.contains("draft 7 since milestone M-002 " + hash), text);
                assertTrue(text.contains("Draft of 14 March 2026: numbers may still change."), text);
            }
            assertEquals(
                    "Content hash " + Sample.issue().contentHash(),
                    pdf.document().getDocumentInformation().getKeywords());
            assertEquals(
                    "Tarnbeck, C-002, 1 × 11, draft 7 since milestone M-002, 14 March 2026",
                    pdf.document().getDocumentInformation().getSubject());
            assertEquals(
                    "2", pdf.document().getDocumentCatalog().getPageLabels().getLabelsByPageIndices()[1]);
        }
    }

    @Test
    void wideTablesGoOverThePageAndTheirNumbersAreLeftToTheLastChapter() throws IOException {
        List<Column> columns = IntStream.rangeClosed(1, 9)
                .mapToObj(i -> Column.text("Unbroken" + i))
                .toList();
        List<Phrase> row = new ArrayList<>(Collections.nCopies(8, Phrase.of("word")));
        row.add(Phrase.of(Sample.entry("Widest", "w", "subject", "1.5", "m")));
        Sample content = Sample.empty().with("t", new BlockAnswer.Table(columns, Collections.nCopies(9, row)));
        try (ReadPdf pdf = read("```t\n```\n", content)) {
            String text = pdf.text(1);
            assertTrue(text.replaceAll("\\s+", " ").contains("Unbroken8 Unbroken9"), text);
            assertFalse(text.contains("Widest"), text);
            assertTrue(pdf.text(2).contains("Widest"), pdf.text(2));
        }
    }

    @Test
    void theTitleThatNeedsTheRoomGetsIt() throws IOException {
        List<List<Phrase>> rows = Collections.nCopies(
                20,
                List.of(
                        Phrase.of("R-001"),
                        Phrase.of("a title that stands on one line"),
                        Phrase.of("seven words that may take two lines of the table")));
        List<List<Phrase>> withLong = new ArrayList<>(rows);
        withLong.add(List.of(
                Phrase.of("R-002"), Phrase.of("short"), Phrase.of(String.join(" ", Collections.nCopies(30, "more")))));
        Sample content = Sample.empty()
                .with(
                        "t",
                        new BlockAnswer.Table(
                                List.of(Column.text("Id"), Column.text("Title"), Column.text("Words")), withLong));
        try (ReadPdf pdf = read("```t\n```\n", content)) {
            assertEquals(21, pdf.bodyText(1).split("R-001 a title that stands on one line seven words", -1).length);
        }
    }

    @Test
    void wordsWiderThanTheColumnAreCutNotLost() throws IOException {
        String longWord = "x".repeat(500);
        Sample content = Sample.empty().with("x", TextAnswer.of(new Inline.Plain(longWord)));
        try (ReadPdf pdf = read("{{ x }}", content)) {
            assertTrue(pdf.bodyText(1).replaceAll("\\s", "").contains(longWord));
        }
    }

    @Test
    void marginNotesThatDoNotFitAreCounted() throws IOException {
        List<List<Phrase>> rows = IntStream.rangeClosed(1, 40)
                .mapToObj(i -> List.of(
                        Phrase.of(Sample.entry("Figure " + i, "f" + i, "subject", "1." + i, "m")),
                        Phrase.of(Sample.entry("Other " + i, "o" + i, "subject", "2." + i, "m"))))
                .toList();
        Sample content =
                Sample.empty().with("t", new BlockAnswer.Table(List.of(Column.number("A"), Column.number("B")), rows));
        try (ReadPdf pdf = read("```t\n```\n", content)) {
            String margin = pdf.marginText(1);
            assertTrue(margin.matches("(?s).*\\d+ more in the annex\\s*"), margin);
            assertTrue(margin.contains("Figure 1, subject"), margin);
        }
    }

    @Test
    void deepListsAndQuotesStayOnThePage() throws IOException {
        String deep = IntStream.range(0, 15)
                .mapToObj(i -> "  ".repeat(i) + "- level" + i + "\n")
                .reduce("", String::concat);
        try (ReadPdf pdf = read(deep + "\n" + "> ".repeat(10) + "quoted deeply\n", Sample.empty())) {
            assertTrue(pdf.bodyText(1).contains("level14"), pdf.bodyText(1));
            assertTrue(pdf.bodyText(1).replaceAll("\\s+", " ").contains("quoted deeply"));
        }
    }

    @Test
    void aNumberShownWithoutUnitStillHasItsEntry() throws IOException {
        Sample content = Sample.empty()
                .with(
                        "x",
                        TextAnswer.of(new Inline.Live(ShownValue.of("7"), Sample.entry("Figure", "f", "s", "7", "m"))));
        try (ReadPdf pdf = read("# {{ x }} up\n\n- {{ x }}\n", content)) {
            assertEquals(2, pdf.pageOf("n1"));
            assertTrue(pdf.text(2).contains("7\u202Fm"), pdf.text(2));
        }
    }
}
