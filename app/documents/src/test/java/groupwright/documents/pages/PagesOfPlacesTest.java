package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.sample.Sample;
import groupwright.documents.trace.TraceEntry;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where a document says on which pages numbers are shown. */
class PagesOfPlacesTest {
    private static final TraceEntry RANGE = Sample.entry("Range", "range C-1", "C-1", "450", "%");
    private static final TraceEntry GEARS = Sample.entry("Gears", "gears C-1", "C-1", "12", "");
    private static final TraceEntry NEVER = Sample.entry("Never", "never C-1", "C-1", "1", "");
    private static final Sample CONTENT = Sample.empty()
            .with("range", TextAnswer.of(Inline.Live.of(RANGE)))
            .with("gears", TextAnswer.of(Inline.Live.of(GEARS)))
            .with(
                    "pages",
                    new BlockAnswer.Table(
                            List.of(Column.text("What"), Column.text("Page")),
                            List.of(row("Range", RANGE), row("Either", RANGE, GEARS), row("Neither", NEVER))));

    private static List<Phrase> row(String what, TraceEntry... entries) {
        return List.of(Phrase.of(what), Phrase.of(new Inline.Places(List.of(entries))));
    }

    @Test
    void pagesBeforeAndBehindAreNamedOnceEachAndADashStandsForNone() throws IOException {
        String filler = "words\n\n".repeat(45);
        String template =
                "{{ range }} {{ range }}\n\n```pages\n```\n\n" + filler + "{{ gears }}\n\n" + filler + "{{ range }}\n";
        try (ReadPdf pdf = new ReadPdf(
                new PdfRenderer().render(Sample.document(template, CONTENT)).bytes())) {
            int gears = pdf.pageOf("u2-1");
            int later = pdf.pageOf("u1-3");
            assertTrue(1 < gears && gears < later, gears + ", " + later);
            String text = pdf.bodyText(1);
            assertTrue(text.contains("Range 1, " + later), text);
            assertTrue(text.contains("Either 1, " + gears + ", " + later), text);
            assertTrue(text.contains("Neither —"), text);
            assertTrue(pdf.linksOn(1).containsAll(Set.of("u1-1", "u1-3", "u2-1")), "links: " + pdf.linksOn(1));
            String chapter = pdf.text(pdf.pageOf("n1"));
            assertTrue(chapter.contains("Shown on page 1, " + later), chapter);
        }
    }

    @Test
    void aLongListOfPagesThatPushesNumbersOnIsStillRight() throws IOException {
        String filler = "words\n\n".repeat(45);
        StringBuilder template = new StringBuilder("```pages\n```\n\n");
        for (int i = 0; i < 30; i++) {
            template.append(filler).append("{{ range }}\n\n");
        }
        try (ReadPdf pdf = new ReadPdf(new PdfRenderer()
                .render(Sample.document(template.toString(), CONTENT))
                .bytes())) {
            StringBuilder expected = new StringBuilder("Range");
            for (int i = 1; i <= 30; i++) {
                expected.append(i == 1 ? " " : ", ").append(pdf.pageOf("u1-" + i));
            }
            String text = pdf.bodyText(1).replaceAll("\\s+", " ");
            assertEquals(true, text.contains(expected), text + " has not " + expected);
        }
    }
}
