package groupwright.documents.pages;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import java.util.ArrayDeque;
import java.util.Deque;

/** Builds the tree of headings that viewers show beside the pages. */
final class Outline {
    private record Open(int level, PdfOutline item) {}

    private final Deque<Open> path = new ArrayDeque<>();

    Outline(PdfContentByte ink) {
        path.push(new Open(0, ink.getRootOutline()));
    }

    /** Adds a heading under the last one of a lower level; levels may be skipped. */
    void add(int level, String title, PdfDestination place) {
        while (path.element().level() >= level) {
            path.pop();
        }
        path.push(new Open(level, new PdfOutline(path.element().item(), place, title, level == 1)));
    }
}
