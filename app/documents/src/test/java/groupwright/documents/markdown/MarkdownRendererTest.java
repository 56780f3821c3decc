package groupwright.documents.markdown;

import groupwright.documents.sample.Sample;
import org.junit.jupiter.api.Test;

class MarkdownRendererTest {
    @Test
    void show() {
        System.out.println(new MarkdownRenderer().render(Sample.document(Sample.TEMPLATE, Sample.tarnbeck())));
    }
}
