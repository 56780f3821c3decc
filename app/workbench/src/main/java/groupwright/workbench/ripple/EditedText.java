package groupwright.workbench.ripple;

import groupwright.definition.history.FieldChange;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Item;
import groupwright.definition.record.UnitSuffix;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.InputText;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Changed fields in words: what it is, what stood there, what stands there. */
final class EditedText {
    private static final int LONGEST = 32;

    private final Definition after;
    private final Definition before;
    private final InputText inputs;
    private final Words words;

    EditedText(Definition before, Definition after, AnswerText text, Words words) {
        this.before = before;
        this.after = after;
        this.inputs = new InputText(text, after.project().currency());
        this.words = words;
    }

    /** One changed field. */
    record Edited(Address address, String what, String before, String after) {
        /** For example {@code R-005 target 20 → 18 %}. */
        String text() {
            if (before.isEmpty() || after.isEmpty()) {
                return (what + " " + before + after).strip();
            }
            return what + " " + before + " → " + after;
        }
    }

    /** All changes in one line: the first, and how many more. */
    String line(List<FieldChange> changes) {
        if (changes.isEmpty()) {
            return words.text("edited.nothing");
        }
        String first = of(changes.get(0)).text();
        return changes.size() == 1 ? first : words.text("edited.more", first, Integer.toString(changes.size() - 1));
    }

    Edited of(FieldChange change) {
        Address address = change.address();
        if (address.path().isEmpty()) {
            boolean added = change.before().isEmpty();
            Object record = (added ? change.after() : change.before()).orElseThrow();
            String what = words.text(added ? "edited.added" : "edited.removed", address.record());
            return new Edited(address, what, "", shortened(((Entry) record).title()));
        }
        String what = address.record() + " " + label(address);
        String unit = unit(address);
        if (change.before().orElse(null) instanceof List<?> was
                && change.after().orElse(null) instanceof List<?> is
                && differingOnes(was, is).isPresent()) {
            List<?> pair = differingOnes(was, is).get();
            return new Edited(address, what, value(pair.get(0), ""), value(pair.get(1), unit));
        }
        return new Edited(
                address,
                what,
                change.before().map(value -> value(value, "")).orElse(words.text("edited.empty")),
                change.after().map(value -> value(value, unit)).orElse(words.text("edited.empty")));
    }

    private String label(Address address) {
        List<String> path = address.path();
        String last = FieldLabel.of(address);
        return path.size() >= 3 && !path.get(path.size() - 2).matches("k1")
                ? path.get(path.size() - 2) + " " + last
                : last;
    }

    /** Where two lists of plain values differ in one place only, the two values there. */
    private static Optional<List<?>> differingOnes(List<?> was, List<?> is) {
        List<Object> found = new ArrayList<>();
        if (was.size() != is.size()) {
            return Optional.empty();
        }
        for (int i = 0; i < was.size(); i++) {
            if (!was.get(i).equals(is.get(i))) {
                found.add(was.get(i));
                found.add(is.get(i));
            }
        }
        return found.size() == 2 && !(found.get(0) instanceof Item) ? Optional.of(found) : Optional.empty();
    }

    /** A target has its unit in the field beside it, other fields in their name. */
    private String unit(Address address) {
        String name = address.path().get(address.path().size() - 1);
        String own = UnitSuffix.shown(name);
        if (!own.isEmpty() || address.path().size() < 3) {
            return own;
        }
        List<String> beside = new ArrayList<>(address.path());
        beside.set(beside.size() - 1, "unit");
        Address unit = new Address(address.record(), beside);
        return after.value(unit)
                .or(() -> before.value(unit))
                .map(Object::toString)
                .orElse("");
    }

    private String value(Object value, String unit) {
        if (value instanceof Item item) {
            return item.id();
        }
        ShownValue shown = inputs.of(value, unit);
        return shortened(shown.text());
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1).stripTrailing() + "…";
    }
}
