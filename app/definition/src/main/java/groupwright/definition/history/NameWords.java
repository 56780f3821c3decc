package groupwright.definition.history;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/** The words of edits' names; another language is another file beside the one read here. */
final class NameWords {
    private static final ResourceBundle WORDS =
            ResourceBundle.getBundle("groupwright.definition.history.words", Locale.ROOT);

    private NameWords() {}

    static String of(EditName name, Optional<String> before, Optional<String> after) {
        return name.address().map(address -> told(name, address, before, after)).orElseGet(() -> fill("act.nothing"));
    }

    private static String told(EditName name, Address address, Optional<String> before, Optional<String> after) {
        String place = place(address, name.field());
        String record = address.record().text();
        return switch (name.act()) {
            case NOTHING -> fill("act.nothing");
            case ADD -> fill("act.add", record);
            case REMOVE -> fill("act.remove", record);
            case RETIRE -> fill("act.retire", record);
            case USE_AGAIN -> fill("act.use-again", record);
            case ADD_ITEM -> fill("act.add-item", place, last(address));
            case REMOVE_ITEM -> fill("act.remove-item", place, last(address));
            case REORDER -> fill("act.reorder", place);
            case SET -> fill("act.set", place, before.orElse(none()), after.orElse(none()), unit(name.unit()));
            case CHANGE -> fill("act.change", place);
        };
    }

    private static String none() {
        return fill("value.none");
    }

    /** A narrow space stands before a unit, none before the degree. */
    private static String unit(String unit) {
        return unit.isEmpty() || unit.equals("°") ? unit : "\u202f" + unit;
    }

    private static String place(Address address, String field) {
        String own = "place." + address;
        if (WORDS.containsKey(own)) {
            return fill(own);
        }
        return address.record().equals(RecordId.PROJECT)
                ? fill("place.project", field)
                : fill("place.record", address.record().text(), field);
    }

    private static String last(Address address) {
        List<String> path = address.path();
        return path.get(path.size() - 1);
    }

    static String andMore(String told, int more) {
        return fill("more", told, Integer.toString(more));
    }

    /** What a field is called: its name in words, without the unit. */
    static String field(String name) {
        if (WORDS.containsKey("field." + name)) {
            return fill("field." + name);
        }
        int unit = name.indexOf('_');
        String bare = unit < 0 ? name : name.substring(0, unit);
        return bare.replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    private static String fill(String key, Object... parts) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(parts);
    }
}
