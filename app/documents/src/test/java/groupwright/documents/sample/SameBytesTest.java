package groupwright.documents.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.documents.charts.SampleCharts;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.html.HtmlRenderer;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.pages.PdfRenderer;
import groupwright.documents.tree.DocumentTree;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Documents do not depend on the machine's language, encoding, clock or display. */
class SameBytesTest {
    @Test
    void anotherLanguageTimeZoneAndEncodingGiveTheSameBytes() throws Exception {
        assertEquals(hashes(), inAnotherMachine());
    }

    private static String inAnotherMachine() throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(List.of(
                        java,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-Duser.language=de",
                        "-Duser.country=DE",
                        "-Duser.timezone=Pacific/Auckland",
                        "-Dfile.encoding=US-ASCII",
                        "-Djava.awt.headless=true",
                        SameBytesTest.class.getName()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        assertEquals(0, process.waitFor());
        return answer;
    }

    /** Prints the hashes; run by the test in a process of its own. */
    public static void main(String[] arguments) throws NoSuchAlgorithmException {
        System.out.print(hashes());
    }

    private static String hashes() throws NoSuchAlgorithmException {
        DocumentTree tree = Sample.document(Sample.TEMPLATE, Sample.tarnbeck());
        DocumentTree charts = Sample.document(
                "```ladder\n```\n\n```bars\n```\n",
                Sample.empty()
                        .with("ladder", new BlockAnswer.Drawing(SampleCharts.ladder(), List.of()))
                        .with("bars", new BlockAnswer.Drawing(SampleCharts.bars(), List.of())));
        return hashes(tree) + "\n" + hashes(charts);
    }

    private static String hashes(DocumentTree tree) throws NoSuchAlgorithmException {
        return hash(new MarkdownRenderer().render(tree).getBytes(StandardCharsets.UTF_8)) + "\n"
                + hash(new HtmlRenderer().render(tree).getBytes(StandardCharsets.UTF_8)) + "\n"
                + hash(new PdfRenderer().render(tree).bytes());
    }

    private static String hash(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
