package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.GearLadder;
import groupwright.documents.charts.SampleCharts;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.sample.Sample;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;

/** Charts in documents: drawn and searchable in PDF, in words and as a table in Markdown. */
class ChartsOnPagesTest {
    private static final Sample CONTENT = Sample.empty()
            .with("ladder", new BlockAnswer.Drawing(SampleCharts.ladder(), List.of()))
            .with("bars", new BlockAnswer.Drawing(SampleCharts.bars(), List.of()));
    private static final String TEMPLATE = "# Gears\n\n```ladder\nAll *gears*\n```\n\n```bars\n```\n\nAfter both.\n";

    private static byte[] pdf(String template, Sample content) {
        RenderedPdf rendered = new PdfRenderer().render(Sample.document(template, content));
        assertEquals(List.of(), rendered.warnings());
        return rendered.bytes();
    }

    @Test
    void textOfChartsIsTextInReadingOrder() throws IOException {
        try (ReadPdf read = new ReadPdf(pdf(TEMPLATE, CONTENT))) {
            String text = read.bodyText(1);
            assertTrue(text.contains("Figure 1-1  All gears"), text);
            assertTrue(text.contains("C-001 36"), text);
            assertTrue(text.contains("C-002 32"), text);
            assertTrue(text.contains("2\u202Fm 3 4 5 6 7 8"), text);
            assertTrue(text.contains("R-003 needs 1.58 m or less"), text);
            assertTrue(text.contains("Figure 1-2  Steps between cogs: C-002, %; dots: like positions a turn"), text);
            assertTrue(text.contains("20.0 16.7 14.3 12.5 16.7 19.0 20.0 16.7 14.3 12.5"), text);
            assertTrue(text.contains("at most 18\u202F%"), text);
            assertTrue(text.contains("10 12 14 16 18 21 25 30 35 40 45"), text);
            assertTrue(text.indexOf("After both") > text.indexOf("10 12 14"), text);
        }
    }

    @Test
    void chartsAreLinesNotPicturesAndBringNoOtherFont() throws IOException {
        try (ReadPdf read = new ReadPdf(pdf(TEMPLATE, CONTENT))) {
            for (PDPage page : read.document().getPages()) {
                assertFalse(page.getResources().getXObjectNames().iterator().hasNext(), "no picture");
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded() && font.getName().matches("[A-Z]{6}\\+Inter-.*"), font.getName());
                }
            }
        }
    }

    @Test
    void digitsInChartsAdvanceLikeTheZero() throws IOException {
        GearLadder ladder = new GearLadder(
                "G-001",
                List.of(new GearLadder.Lane(SampleCharts.LEAD, "C-002", 11, List.of(1.0, 4.0))),
                List.of(),
                Locale.ENGLISH);
        Sample content = Sample.empty().with("ladder", new BlockAnswer.Drawing(ladder, List.of()));
        try (ReadPdf read = new ReadPdf(pdf("```ladder\n```\n", content))) {
            List<Double> ones = read.advances(1, "11");
            assertEquals(2, ones.size(), "the ring stands alone");
            // Inter's zero at 11 pixels of 0.75 points; its usual one is a quarter narrower
            double zero = new FontShelf().advance('0', Style.TABLE) * 11 * 0.75 / 1000;
            assertEquals(Math.rint(zero * 100), ones.get(0), 2);
        }
    }

    @Test
    void equalChartsGiveEqualBytes() {
        assertArrayEquals(pdf(TEMPLATE, CONTENT), pdf(TEMPLATE, CONTENT));
    }

    @Test
    void aLadderTallerThanAPageIsMadeToFitIt() throws IOException {
        GearLadder.Lane lane =
                new GearLadder.Lane(new ConceptSign(7, ConceptSign.Standing.OTHER), "C-007", 30, List.of(1.0, 4.0));
        GearLadder tall = new GearLadder("G-001", Collections.nCopies(60, lane), List.of(), Locale.ENGLISH);
        Sample content = Sample.empty().with("ladder", new BlockAnswer.Drawing(tall, List.of()));
        try (ReadPdf read = new ReadPdf(pdf("Before.\n\n```ladder\nCaption\n```\n", content))) {
            String text = read.bodyText(1).contains("Caption") ? read.bodyText(1) : read.bodyText(2);
            assertEquals(61, text.split("C-007", -1).length, "all lanes stand with their caption");
        }
    }

    @Test
    void markdownHasTheDescriptionAndTheTable() {
        String text = new MarkdownRenderer().render(Sample.document(TEMPLATE, CONTENT));
        assertTrue(text.contains("**Figure 1-1** All *gears*\n\nMetres per crank turn on the wheel of G-003"), text);
        assertTrue(text.contains("| Concept | Ring | Gear 1, m | 2 | 3 |"), text);
        assertTrue(text.contains("| C-002 | 32 | 1.64 | 1.85 | 2.11 |"), text);
        assertTrue(text.contains("**Figure 1-2** Steps between cogs: C-002, %; dots: like positions a turn\n\n"), text);
        assertTrue(text.contains("| 25–30 | misses | 20.0 | 5 |"), text);
        assertTrue(text.contains("|\n\nAfter both.\n"), text);
    }
}
