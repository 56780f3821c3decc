package groupwright.definition.problem;

import java.util.Objects;

/**
 * One thing wrong with the input; readers collect problems and go on.
 *
 * @param file the file or folder concerned, empty if none
 * @param line line in the file counted from 1, or 0 if unknown
 * @param column column in the line counted from 1 in UTF-16 units, or 0 if unknown
 * @param record the id of the record concerned, empty if none
 * @param field the field concerned, empty if none
 * @param wrong what is wrong, without a full stop
 * @param remedy what to do about it, without a full stop, empty if nothing can be advised
 */
public record Problem(String file, int line, int column, String record, String field, String wrong, String remedy) {
    public Problem {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(record, "record");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(remedy, "remedy");
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("line and column must not be negative, were " + line + " and " + column);
        }
        if (wrong.isBlank()) {
            throw new IllegalArgumentException("a problem must say what is wrong");
        }
    }

    /** A problem of a whole file or folder. */
    public static Problem ofFile(String file, String wrong, String remedy) {
        return new Problem(file, 0, 0, "", "", wrong, remedy);
    }

    /**
     * For example {@code requirements/R-001.json:12:5: R-001, target: "x" is not a number; write for example 50.}
     *
     * @return one line; parts that are unknown are left out, control characters (which a file name may hold) shown as
     *     the replacement character
     */
    public String sentence() {
        StringBuilder text = new StringBuilder(place());
        text.append(text.isEmpty() ? "" : ": ");
        text.append(record)
                .append(record.isEmpty() || field.isEmpty() ? "" : ", ")
                .append(field);
        text.append(record.isEmpty() && field.isEmpty() ? "" : ": ");
        text.append(wrong).append(remedy.isEmpty() ? "" : "; ").append(remedy).append('.');
        return text.toString().replaceAll("[\\p{Cntrl}\\u2028\\u2029]", "\uFFFD");
    }

    private String place() {
        if (file.isEmpty() || line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
