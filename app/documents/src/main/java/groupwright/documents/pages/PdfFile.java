package groupwright.documents.pages;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfPageLabels;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Issue;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Opens, fills and closes the file. */
final class PdfFile {
    private static final byte[] NO_ID = new byte[16];

    /** Draws one page. */
    interface PageDrawing {
        void draw(Canvas canvas, int index);
    }

    private PdfFile() {}

    static byte[] write(
            Issue issue, Labels labels, FontShelf shelf, PageGeometry geometry, int pages, PageDrawing drawing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Rectangle paper = new Rectangle((float) geometry.width(), (float) geometry.height());
        Document document = new Document(paper, 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
        FileFacts facts = facts(issue, labels);
        document.addTitle(facts.title());
        document.addAuthor(facts.author());
        document.addSubject(facts.subject());
        document.addKeywords(facts.keywords());
        document.addCreator(facts.creator());
        writer.setPdfVersion(PdfWriter.PDF_VERSION_1_7);
        writer.setRgbTransparencyBlending(
                true); // PDF/A-2 wants a blending space where a library speaks of transparency
        writer.setXmpMetadata(facts.xmp());
        document.open();
        describe(writer, issue);
        meanColours(writer);
        writer.setPageLabels(arabic());
        Canvas canvas = new PdfCanvas(writer, shelf, geometry.height());
        for (int i = 0; i < pages; i++) {
            if (i > 0) {
                document.newPage();
            }
            writer.setPageEmpty(false);
            drawing.draw(canvas, i);
        }
        document.close();
        return SteadyBytes.of(bytes.toByteArray());
    }

    /** Viewers name pages as the foot does. */
    private static PdfPageLabels arabic() {
        PdfPageLabels numbers = new PdfPageLabels();
        numbers.addPageLabel(1, PdfPageLabels.DECIMAL_ARABIC_NUMERALS);
        return numbers;
    }

    private static FileFacts facts(Issue issue, Labels labels) {
        return new FileFacts(
                issue.title() + (issue.project().isEmpty() ? "" : ", " + issue.project()),
                issue.company(),
                Stream.of(issue.project(), issue.only(), issue.leadConcept(), issue.state(), issue.shownDate())
                        .filter(part -> !part.isBlank())
                        .collect(Collectors.joining(", ")),
                labels.text("title.contentHash") + " " + issue.contentHash(),
                "Groupwright",
                Document.getVersion(),
                issue.locale().toLanguageTag(),
                issue.date() + "T00:00:00Z");
    }

    /** Says which red, green and blue are meant, as PDF/A-2 wants. */
    private static void meanColours(PdfWriter writer) {
        try {
            writer.setOutputIntents(
                    "", "sRGB IEC61966-2.1", "", "sRGB IEC61966-2.1", ICC_Profile.getInstance(StandardRgb.profile()));
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory does not fail", impossible);
        }
        PdfDictionary intent =
                writer.getExtraCatalog().getAsArray(PdfName.OUTPUTINTENTS).getAsDict(0);
        intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
    }

    private static void describe(PdfWriter writer, Issue issue) {
        PdfString date = new PdfString("D:" + issue.date().format(DateTimeFormatter.BASIC_ISO_DATE) + "000000Z");
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
        writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(NO_ID, NO_ID));
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(issue.locale().toLanguageTag()));
    }
}
