package groupwright.workbench.lists;

import groupwright.workbench.look.Token;
import groupwright.workbench.look.Weight;
import java.util.Objects;

/** A text in a cell. */
public record CellText(String text, Weight weight, Token colour, Line line) {
    /** What is drawn with it. */
    public enum Line {
        NONE,
        /** It leads somewhere. */
        UNDER,
        /** Never said again. */
        THROUGH
    }

    public CellText {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(line, "line");
    }

    /** Text in ink. */
    public static CellText plain(String text) {
        return new CellText(text, Weight.REGULAR, Token.INK, Line.NONE);
    }

    /** Text in muted. */
    public static CellText muted(String text) {
        return new CellText(text, Weight.REGULAR, Token.MUTED, Line.NONE);
    }

    /** Text that leads somewhere. */
    public static CellText link(String text) {
        return new CellText(text, Weight.REGULAR, Token.ACCENT, Line.UNDER);
    }

    /** The same, heavier. */
    public CellText strong() {
        return new CellText(text, Weight.STRONG, colour, line);
    }

    /** The same, struck out and muted. */
    public CellText struck() {
        return new CellText(text, weight, Token.MUTED, Line.THROUGH);
    }
}
