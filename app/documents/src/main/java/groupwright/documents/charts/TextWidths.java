package groupwright.documents.charts;

/** Measures text as it will be written. */
public interface TextWidths {
    /** Width of a text; all digits are as wide as the zero. */
    double width(String text, InterFont font, double size);
}
