package groupwright.workbench.cassettes;

import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers out of what was typed; what is none is said at its field. */
final class TypedTeeth {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}([.,]\\d{1,6})?");
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;/\u2013-]+");

    private final Draft draft;
    private final Words words;
    private final Map<Entry, String> wrong;

    TypedTeeth(Draft draft, Words words, Map<Entry, String> wrong) {
        this.draft = draft;
        this.words = words;
        this.wrong = wrong;
    }

    /** A whole number; nothing where the field is empty or wrong. */
    Optional<Integer> whole(Entry entry) {
        String text = draft.text(entry);
        if (text.isEmpty() || WHOLE.matcher(text).matches()) {
            if (text.isEmpty() && isNeeded(entry)) {
                wrong.put(entry, words.text("wrong.empty"));
            }
            return text.isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(text));
        }
        wrong.put(entry, words.text("wrong.whole", text));
        return Optional.empty();
    }

    private static boolean isNeeded(Entry entry) {
        return entry == Entry.SMALLEST_FROM || entry == Entry.LARGEST_FROM || entry == Entry.COGS_FROM;
    }

    /** A number with point or comma. */
    Optional<Double> number(Entry entry) {
        String text = draft.text(entry);
        if (text.isEmpty() || NUMBER.matcher(text).matches()) {
            return text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text.replace(',', '.')));
        }
        wrong.put(entry, words.text("wrong.number", text));
        return Optional.empty();
    }

    /** Tooth counts parted by blanks, commas, hyphens or strokes. */
    List<Integer> list(Entry entry) {
        try {
            return list(draft.text(entry), words);
        } catch (IllegalArgumentException none) { // its message is a sentence for users
            wrong.put(entry, none.getMessage());
            return List.of();
        }
    }

    /**
     * Tooth counts out of a text.
     *
     * @throws IllegalArgumentException with a sentence for users
     */
    static List<Integer> list(String text, Words words) {
        List<Integer> teeth = new ArrayList<>();
        for (String part : BETWEEN.split(text.strip())) {
            if (!part.isEmpty()) {
                boolean number = WHOLE.matcher(part).matches();
                if (!number || Integer.parseInt(part) < 5 || Integer.parseInt(part) > 120) {
                    throw new IllegalArgumentException(words.text(number ? "wrong.range" : "wrong.list", part));
                }
                teeth.add(Integer.valueOf(part));
            }
        }
        return teeth;
    }
}
