package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import groupwright.documents.sample.Sample;
import groupwright.documents.tree.DocumentTree;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pages of an invented document look as they did. Pictures are grey, of 60 pixels an inch, and compared by the darkness
 * of squares of 4 pixels. Write them anew, on purpose only and after looking at those in {@code target/pictures}, with
 * {@code mvn -pl app/documents -am test -Dgolden.write=true}.
 */
class PagePicturesTest {
    private static final int SQUARE = 4;
    /** One table column moved by 2 points gives more than three times as much in its squares. */
    private static final double MOST = 0.1;

    private static final double MOST_MEAN = 0.002;
    private static final Path GOLDEN = Path.of("src/test/resources/groupwright/documents/pages");

    private static DocumentTree document() {
        List<Column> wide = IntStream.rangeClosed(1, 9)
                .mapToObj(i -> i == 2 ? Column.text("What it is called") : Column.number("Measure " + i + ", mm"))
                .toList();
        List<List<Phrase>> rows = new ArrayList<>();
        for (int row = 0; row < 20; row++) {
            int number = row;
            rows.add(IntStream.rangeClosed(1, 9)
                    .mapToObj(
                            i -> Phrase.of(i == 2 ? "a name of some length" : Integer.toString(1000 + 37 * i * number)))
                    .toList());
        }
        return Sample.document(
                Sample.TEMPLATE + "\n```wide\nNine columns over the page\n```\n",
                Sample.tarnbeck().with("wide", new BlockAnswer.Table(wide, rows)));
    }

    @ParameterizedTest(name = "page {1} on {0}")
    @CsvSource({"A4, 1", "A4, 2", "A4, 3", "A4, 4", "LETTER, 1"})
    void aPageLooksAsItDid(PaperSize paper, int page) throws IOException {
        String name = "page-" + paper.name().toLowerCase(java.util.Locale.ROOT) + "-" + page + ".png";
        BufferedImage found = picture(paper, page);
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(GOLDEN);
            ImageIO.write(found, "png", GOLDEN.resolve(name).toFile());
        }
        BufferedImage expected = golden(name);
        Difference difference = Difference.of(expected, found);
        if (difference.isSeen()) {
            Path actual = Files.createDirectories(Path.of("target/pictures")).resolve(name);
            ImageIO.write(found, "png", actual.toFile());
            throw new AssertionError(name + " looks otherwise: mean " + difference.mean() + ", most "
                    + difference.most() + " at " + difference.where() + " points; look at " + actual.toAbsolutePath()
                    + " and, if it is right, write it anew with -Dgolden.write=true");
        }
        assertTrue(found.getWidth() == expected.getWidth() && found.getHeight() == expected.getHeight(), name);
    }

    private static BufferedImage picture(PaperSize paper, int page) throws IOException {
        byte[] file = new PdfRenderer(new FontShelf(), paper).render(document()).bytes();
        try (PDDocument pdf = Loader.loadPDF(file)) {
            return new PDFRenderer(pdf).renderImageWithDPI(page - 1, 60, ImageType.GRAY);
        }
    }

    private static BufferedImage golden(String name) throws IOException {
        Path file = GOLDEN.resolve(name);
        if (!Files.exists(file)) {
            throw new AssertionError(file.toAbsolutePath() + " is missing; write it with -Dgolden.write=true");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return ImageIO.read(stream);
        }
    }

    /** How pictures differ: darkness from 0 to 1 of squares, and where most, in points. */
    private record Difference(double mean, double most, String where) {
        boolean isSeen() {
            return mean > MOST_MEAN || most > MOST;
        }

        static Difference of(BufferedImage one, BufferedImage other) {
            int across = Math.min(one.getWidth(), other.getWidth()) / SQUARE;
            int down = Math.min(one.getHeight(), other.getHeight()) / SQUARE;
            double sum = 0;
            double most = 0;
            String where = "";
            for (int x = 0; x < across; x++) {
                for (int y = 0; y < down; y++) {
                    double difference = Math.abs(darkness(one, x, y) - darkness(other, x, y));
                    sum += difference;
                    if (difference > most) {
                        most = difference;
                        where = x * SQUARE * 72 / 60 + ", " + y * SQUARE * 72 / 60;
                    }
                }
            }
            return new Difference(sum / (across * down), most, where);
        }

        private static double darkness(BufferedImage picture, int column, int row) {
            double sum = 0;
            for (int x = 0; x < SQUARE; x++) {
                for (int y = 0; y < SQUARE; y++) {
                    sum += picture.getRaster().getSample(column * SQUARE + x, row * SQUARE + y, 0);
                }
            }
            return 1 - sum / (SQUARE * SQUARE * 255);
        }
    }
}
