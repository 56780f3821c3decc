package groupwright.definition.history;

import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Address;
import java.util.Optional;
import java.util.function.Function;

/**
 * What an edit is called where it is undone and where its ripple is told, for example {@code R-005 target 20 → 18 %}; in
 * parts, so that a window can show the numbers as its reader writes them.
 *
 * @param act what was done
 * @param address the first place it was done at; nothing where nothing was
 * @param field what that place is called, for example {@code cog spacing}
 * @param before what stood there, where it is short enough to say
 * @param after what stands there
 * @param unit unit of both; empty where there is none
 * @param more how many other places changed too
 * @param label what the user or the command called it, in place of all this
 */
public record EditName(
        Act act,
        Optional<Address> address,
        String field,
        Optional<Object> before,
        Optional<Object> after,
        String unit,
        int more,
        Optional<String> label) {
    /** What an edit did first of all. */
    public enum Act {
        NOTHING,
        ADD,
        REMOVE,
        RETIRE,
        USE_AGAIN,
        ADD_ITEM,
        REMOVE_ITEM,
        REORDER,
        /** Changed a value that can be said. */
        SET,
        /** Changed something too long to say. */
        CHANGE
    }

    /** The same edit under a name of its own. */
    public EditName called(String name) {
        return new EditName(act, address, field, before, after, unit, more, Optional.of(name));
    }

    /** In English, numbers in their shortest exact form. */
    public String text() {
        return text(ValueText::of);
    }

    /**
     * In English, with values as somebody wants to read them.
     *
     * @param shown the text of a value: an amount, a whole number, a choice, an id, a day or words
     */
    public String text(Function<Object, String> shown) {
        if (label.isPresent()) {
            return label.get();
        }
        String told = NameWords.of(this, before.map(shown), after.map(shown));
        return more == 0 ? told : NameWords.andMore(told, more);
    }
}
