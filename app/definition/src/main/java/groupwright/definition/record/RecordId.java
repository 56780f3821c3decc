package groupwright.definition.record;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The permanent name of a record, for example {@code R-014}; never reused, equal to the file name without ending.
 *
 * <p>Ordered by letters, then number, then text, so that R-9999 stands before R-10000.
 *
 * @param text one to three capital letters, a hyphen, three to six digits; or the word {@code project} for the one
 *     record with the settings of the whole project
 */
public record RecordId(String text) implements Comparable<RecordId> {
    private static final Pattern PATTERN = Pattern.compile("[A-Z]{1,3}-[0-9]{3,6}");

    /** The record that holds what concerns the whole project. */
    public static final RecordId PROJECT = new RecordId("project");

    public RecordId {
        if (!isId(text)) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no record id; an id is like R-014: letters, a hyphen, three to six digits");
        }
    }

    private static boolean isId(String text) {
        return text.equals("project") || PATTERN.matcher(text).matches();
    }

    /** The id this text spells, or nothing. */
    public static Optional<RecordId> parse(String text) {
        return isId(text) ? Optional.of(new RecordId(text)) : Optional.empty();
    }

    /** An id from its letters and number, padded to three digits. */
    public static RecordId of(String letters, int number) {
        String digits = Integer.toString(number);
        return new RecordId(letters + "-" + "0".repeat(Math.max(0, 3 - digits.length())) + digits);
    }

    /** Whether it begins with these letters and a hyphen. */
    public boolean hasLetters(String letters) {
        return lettersEnd() == letters.length() && text.startsWith(letters);
    }

    /** The letters before the hyphen; empty for the project itself. */
    public String letters() {
        return text.substring(0, lettersEnd());
    }

    private int lettersEnd() {
        return Math.max(0, text.indexOf('-'));
    }

    /** The number behind the hyphen; 0 for the project itself. */
    public int number() {
        int value = 0;
        for (int i = text.indexOf('-') + 1; i < text.length() && i > 0; i++) {
            value = 10 * value + (text.charAt(i) - '0');
        }
        return value;
    }

    @Override
    public int compareTo(RecordId other) {
        int end = lettersEnd();
        int otherEnd = other.lettersEnd();
        for (int i = 0; i < Math.min(end, otherEnd); i++) { // without substrings: tables compare ids all the time
            if (text.charAt(i) != other.text.charAt(i)) {
                return text.charAt(i) - other.text.charAt(i);
            }
        }
        if (end != otherEnd) {
            return end - otherEnd;
        }
        int byNumber = Integer.compare(number(), other.number());
        return byNumber != 0 ? byNumber : text.compareTo(other.text);
    }

    /** Mixed: texts that differ in few digits have hashes that differ by little, and sums of those would be equal. */
    @Override
    public int hashCode() {
        int mixed = text.hashCode() * 0x9E3779B1;
        return mixed ^ (mixed >>> 15);
    }

    @Override
    public String toString() {
        return text;
    }
}
