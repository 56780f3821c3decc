package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.documents.charts.SampleCharts;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.sample.Sample;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Files can be kept: they follow PDF/A-2b (ISO 19005-2), as an independent validator judges. */
class ArchivalFileTest {
    private static final Logger VALIDATOR = Logger.getLogger("org.verapdf"); // held, or its level is forgotten

    @BeforeAll
    static void loadValidator() {
        VALIDATOR.setLevel(Level.SEVERE); // it remarks on subsets of fonts that it then accepts
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static List<String> complaints(byte[] file) throws Exception {
        try (PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), PDFAFlavour.PDFA_2_B)) {
            PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, false);
            ValidationResult result = validator.validate(parser);
            return result.getTestAssertions().stream()
                    .map(assertion -> assertion.getRuleId() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
        }
    }

    @Test
    void aDocumentWithTablesChartsAndLinksFollowsPdfA2b() throws Exception {
        Sample content = Sample.tarnbeck()
                .with("ladder", new BlockAnswer.Drawing(SampleCharts.ladder(), List.of()))
                .with("bars", new BlockAnswer.Drawing(SampleCharts.bars(), List.of()));
        byte[] file = new PdfRenderer()
                .render(Sample.document(Sample.TEMPLATE + "\n```ladder\n```\n\n```bars\n```\n", content))
                .bytes();
        assertEquals(List.of(), complaints(file));
    }
}
