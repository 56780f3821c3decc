package groupwright.benchmarks;

import com.lowagie.text.Document;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfWriter;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A specification of 300 pages, from a settled ledger to a PDF on disk, beside the same number of pages of bare text in
 * the same face through the same PDF library: no tables, marks, margin, links or outline.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 4, time = 5)
public class DocumentsBenchmark {
    private static final String SPECIFICATION = "specification";
    private static final String FACE = "/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf";

    private ProjectDocuments documents;
    private Path folder;
    private List<String> words;
    private int pages;

    @Setup
    public void write() throws IOException {
        documents = LargeDocument.documents();
        folder = Files.createTempDirectory("documents");
        documents.write(List.of(SPECIFICATION), Optional.empty(), folder, Set.of(Format.MARKDOWN, Format.PDF));
        try (PdfReader reader = new PdfReader(Files.readAllBytes(folder.resolve("specification.pdf")))) {
            pages = reader.getNumberOfPages();
        }
        words = Files.readAllLines(folder.resolve("specification.md"));
        System.out.println("pages: " + pages);
    }

    @TearDown
    public void clean() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** Filling the template, laying out, drawing, writing. */
    @Benchmark
    public Object ourPages() {
        return documents.write(List.of(SPECIFICATION), Optional.empty(), folder, Set.of(Format.PDF));
    }

    /** The template filled and its numbers traced, no page laid out. */
    @Benchmark
    public Object ourNumbers() {
        return documents.numbers(SPECIFICATION);
    }

    /** As many pages of the document's Markdown as bare text, one paragraph a line. */
    @Benchmark
    public Object bareText() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PageSize.A4, 54, 140, 62, 60);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        document.open();
        Font font = font();
        int line = 0;
        while (writer.getPageNumber() <= pages) {
            String text = words.get(line++ % words.size());
            document.add(new Paragraph(13.5f, text.isEmpty() ? " " : text, font));
        }
        document.close();
        return Files.write(folder.resolve("bare.pdf"), bytes.toByteArray());
    }

    private static Font font() throws IOException {
        try (InputStream stream = DocumentsBenchmark.class.getResourceAsStream(FACE)) {
            BaseFont base = BaseFont.createFont(
                    "Inter-Regular.otf",
                    BaseFont.IDENTITY_H,
                    BaseFont.EMBEDDED,
                    BaseFont.NOT_CACHED,
                    stream.readAllBytes(),
                    null);
            return new Font(base, 9.5f);
        }
    }
}
