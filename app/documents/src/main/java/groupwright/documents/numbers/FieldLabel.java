package groupwright.documents.numbers;

import groupwright.definition.record.Address;
import java.util.List;
import java.util.Locale;

/** The name of a field in words, made of the name in the record: {@code riderMass_kg} is "rider mass". */
public final class FieldLabel {
    private FieldLabel() {}

    /** The innermost field of an address. */
    public static String of(Address address) {
        List<String> path = address.path();
        return path.isEmpty() ? address.record().text() : of(path.get(path.size() - 1));
    }

    /** A field's name in words, without its unit. */
    public static String of(String name) {
        int unit = name.indexOf('_');
        String bare = unit < 0 ? name : name.substring(0, unit);
        StringBuilder words = new StringBuilder();
        for (char c : bare.toCharArray()) {
            if (Character.isUpperCase(c)) {
                words.append(' ');
            }
            words.append(c);
        }
        return words.toString().toLowerCase(Locale.ROOT);
    }
}
