package groupwright.documents.pdf;

import groupwright.documents.sample.Sample;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PdfRendererTest {
    @Test
    void show() throws Exception {
        RenderedPdf pdf = new PdfRenderer().render(Sample.document(Sample.TEMPLATE, Sample.tarnbeck()));
        Files.write(Path.of("target/sample.pdf"), pdf.bytes());
        System.out.println(pdf.warnings());
    }
}
