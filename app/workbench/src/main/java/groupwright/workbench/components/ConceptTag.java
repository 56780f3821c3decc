package groupwright.workbench.components;

import groupwright.documents.charts.ConceptSign;
import groupwright.workbench.look.Words;
import java.util.Locale;
import java.util.Objects;

/**
 * A concept as it is named everywhere: sign, code, and what it is.
 *
 * @param words for example {@code 1 × 12}; may be empty
 * @param name for those who do not see it
 */
public record ConceptTag(ConceptSign sign, String code, String words, String name) {
    public ConceptTag {
        Objects.requireNonNull(sign, "sign");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(name, "name");
    }

    /** A concept; its name says whether it leads. */
    public static ConceptTag of(ConceptSign sign, String code, String words, Locale locale) {
        String name = Words.of(ConceptTag.class, locale)
                .text("concept." + sign.standing().name(), code, words)
                .replace(", , ", ", ")
                .replaceFirst(", $", "");
        return new ConceptTag(sign, code, words, name);
    }

    boolean leads() {
        return sign.standing() == ConceptSign.Standing.LEAD;
    }
}
