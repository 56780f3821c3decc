package groupwright.workbench.components;

import groupwright.definition.record.Part;
import groupwright.workbench.look.Words;
import java.util.Locale;
import java.util.Objects;

/**
 * What a weight rests on.
 *
 * @param word in words, with the number of pieces where they were weighed
 */
public record Basis(Part.Basis basis, String word) {
    public Basis {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(word, "word");
    }

    /**
     * A basis in the reader's language.
     *
     * @param weighed how many pieces; said only where they were weighed
     */
    public static Basis of(Part.Basis basis, int weighed, Locale locale) {
        Words words = Words.of(Basis.class, locale);
        String word = words.text("basis." + basis.name());
        boolean counted = basis == Part.Basis.WEIGHED && weighed > 0;
        return new Basis(basis, counted ? words.text("basis.count", word, weighed) : word);
    }
}
