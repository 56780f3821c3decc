package groupwright.workbench.components;

import groupwright.workbench.look.Weight;
import java.util.Locale;
import java.util.Objects;

/** A mark with its word beside it. */
public record Marked(Mark mark, String word, Weight weight) {
    public Marked {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(weight, "weight");
    }

    /** A mark with its own word. */
    public static Marked of(Mark mark, Locale locale) {
        return new Marked(mark, mark.word(locale), Weight.REGULAR);
    }

    /** The same in the heavier weight. */
    public Marked strong() {
        return new Marked(mark, word, Weight.STRONG);
    }
}
