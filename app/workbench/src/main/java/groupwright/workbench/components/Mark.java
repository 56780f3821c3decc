package groupwright.workbench.components;

import groupwright.documents.content.Verdict;
import groupwright.documents.project.Marks;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.util.Locale;

/** The marks of verdicts, and that of what the last step changed. */
public enum Mark {
    MEETS(Token.MEETS),
    MISSES(Token.MISSES),
    CLOSE(Token.CLOSE),
    MISSING(Token.MISSING),
    /** A state, no verdict. */
    CHANGED(Token.CHANGED);

    private final Token colour;

    Mark(Token colour) {
        this.colour = colour;
    }

    /** The mark of a verdict of the ledger. */
    public static Mark of(groupwright.definition.figure.Verdict verdict) {
        return of(Marks.verdict(verdict));
    }

    static Mark of(Verdict verdict) {
        return switch (verdict) {
            case MEETS -> MEETS;
            case MISSES -> MISSES;
            case MEETS_CLOSE, MISSES_CLOSE -> CLOSE;
            case MISSING_INPUT -> MISSING;
        };
    }

    /** Its word. */
    public String word(Locale locale) {
        return Words.of(Mark.class, locale).text("mark." + name());
    }

    Token colour() {
        return colour;
    }
}
