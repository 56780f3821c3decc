package groupwright.documents.pages;

import java.awt.Color;

/**
 * How text is set.
 *
 * @param size in points
 * @param rise of the baseline in points
 */
record Style(Face face, double size, Color colour, Digits digits, double rise) {
    /** How wide digits are. */
    enum Digits {
        /** As drawn: for running text. */
        PROPORTIONAL,
        /** All as wide as the zero, so that columns align. */
        TABULAR
    }

    static final Style BODY = new Style(Face.REGULAR, 9.5, Paper.INK, Digits.PROPORTIONAL, 0);
    static final Style TABLE = new Style(Face.REGULAR, 8.25, Paper.INK, Digits.TABULAR, 0);
    static final Style CAPTION = new Style(Face.REGULAR, 8, Paper.MUTED, Digits.PROPORTIONAL, 0);
    static final Style NOTE = new Style(Face.REGULAR, 7, Paper.MUTED, Digits.PROPORTIONAL, 0);

    Style in(Face other) {
        return new Style(other, size, colour, digits, rise);
    }

    Style in(Color other) {
        return new Style(face, size, other, digits, rise);
    }

    Style in(Digits other) {
        return new Style(face, size, colour, other, rise);
    }

    Style ofSize(double other) {
        return new Style(face, other, colour, digits, rise);
    }

    Style strong() {
        return in(face.strong());
    }

    /** The small raised number behind a value. */
    Style raised() {
        return new Style(Face.REGULAR, size * 0.66, Paper.ACCENT, Digits.PROPORTIONAL, size * 0.36);
    }
}
