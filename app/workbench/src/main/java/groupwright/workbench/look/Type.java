package groupwright.workbench.look;

import java.awt.Font;
import javax.swing.UIManager;

/** The sizes of text. */
public enum Type {
    /** Captions and units. */
    CAPTION(11),
    SECONDARY(12),
    /** Text and numbers of tables. */
    TABLE(12.5),
    BODY(13),
    HEADING(15),
    /** The title of a place. */
    TITLE(20),
    /** The number in Workings. */
    NUMBER(28);

    /** Height of a capital of Inter as a share of its size, as measured on the font. */
    private static final double CAPITAL = 0.727;
    /** Room of a line as a share of the size. */
    private static final double LINE = 1.36;

    private final double size;

    Type(double size) {
        this.size = size;
    }

    /** In pixels of a screen at 100 %. */
    public double size() {
        return size;
    }

    /** Height of a line of text at 100 %. */
    public double line() {
        return Math.ceil(size * LINE);
    }

    /** Where the baseline of text stands that is to be level with the middle of a room. */
    public double baseline(double middle) {
        return Math.round(middle + size * CAPITAL / 2);
    }

    /** The font for labels and fields of Swing, at the scale that is set. */
    public Font font(Weight weight) {
        return UIManager.getFont(weight.key()).deriveFont((float) (size * Look.scale()));
    }

    /** The font for texts in a language of signs, all equally wide, at the scale that is set. */
    public Font mono() {
        return UIManager.getFont("monospaced.font").deriveFont((float) (size * Look.scale()));
    }

    /** Width of a text at 100 %; all digits are as wide as the zero. */
    public double width(String text, Weight weight) {
        return Look.lettering().width(text, weight.face(), size);
    }

    /** A text cut to a width at 100 %, with "…" at its end where something is left out. */
    public String cut(String text, Weight weight, double room) {
        if (width(text, weight) <= room) {
            return text;
        }
        int fits = 0;
        int tooLong = text.length();
        while (tooLong - fits > 1) {
            int middle = (fits + tooLong) / 2;
            if (width(text.substring(0, middle).stripTrailing() + "…", weight) <= room) {
                fits = middle;
            } else {
                tooLong = middle;
            }
        }
        return text.substring(0, fits).stripTrailing() + "…";
    }
}
