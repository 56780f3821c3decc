package groupwright.documents.template;

import java.util.Objects;

/**
 * One thing wrong with a template.
 *
 * @param kind what sort of thing
 * @param template name of the template
 * @param line from 1
 * @param column from 1, counted in UTF-16 units
 * @param wrong what is wrong and what to do, one sentence without a full stop
 */
public record Problem(Kind kind, String template, int line, int column, String wrong) {
    /** Sorts of problems. */
    public enum Kind {
        /** More than the permitted bytes, blocks or levels. */
        TOO_MUCH,
        /** A name that nothing is called. */
        UNKNOWN_NAME,
        /** A known name without an answer. */
        UNANSWERED,
        /** Braces that do not close, or with nothing in them. */
        MALFORMED,
        /** Raw HTML, pictures, links to other than web addresses. */
        NOT_ALLOWED
    }

    public Problem {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(template, "template");
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("line and column count from 1, were " + line + ", " + column);
        }
        if (wrong.isBlank()) {
            throw new IllegalArgumentException("a problem needs a sentence");
        }
    }

    /** For example {@code brief.md:12:8: nothing is called "gear-rage"; did you mean "gear-range"?} */
    public String sentence() {
        String end = wrong.endsWith("?") || wrong.endsWith(".") ? "" : ".";
        return template + ":" + line + ":" + column + ": " + wrong + end;
    }
}
