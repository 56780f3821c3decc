package groupwright.documents.project;

import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Item;
import groupwright.definition.record.Shape;
import groupwright.documents.numbers.InputText;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Fields of records in the words and digits of the reader, and as single words to compare. */
record FieldText(Sheet sheet) {
    /** Stands where a field is empty. */
    static final String NOTHING = "—";

    /** A value as it is printed: numbers with their unit, choices as words, lists joined. */
    String shown(Component component, Optional<Object> value) {
        String text = value.map(given -> one(given, component.unit())).orElse("");
        return text.isBlank() ? NOTHING : text;
    }

    private String one(Object value, String unit) {
        if (value instanceof List<?> list) {
            return list.stream()
                    .map(element -> one(element, unit))
                    .collect(Collectors.joining(sheet.labels().text("list.separator")));
        } else if (value instanceof Amount) {
            return new InputText(sheet.text(), sheet.definition().project().currency())
                    .of(value, unit)
                    .text();
        } else if (value instanceof LocalDate day) {
            return sheet.reader().day(day);
        } else if (value instanceof Enum<?> word) {
            return ValueText.word(word).replace('-', ' ');
        } else if (value instanceof Criterion criterion) {
            return (criterion.figure() + " " + criterion.parameters()).strip() + " "
                    + sheet.targets().of(criterion);
        } else if (value instanceof Item item) {
            return item.id();
        } else if (value instanceof Integer number) {
            return sheet.reader().number(number, 0);
        }
        return isObject(value) ? parts(value) : value.toString();
    }

    private static boolean isObject(Object value) {
        return value.getClass().isRecord()
                && !(value instanceof groupwright.definition.record.RecordId)
                && !(value instanceof groupwright.definition.record.Settings);
    }

    /** The fields of a small object in a list, for example a gear left out. */
    private String parts(Object value) {
        Shape<?> shape = Shape.of(value.getClass());
        return IntStream.range(0, shape.components().size())
                .mapToObj(i ->
                        one(shape.value(value, i), shape.components().get(i).unit()))
                .collect(Collectors.joining(" "));
    }

    /** The words a value can be compared with: one, or one for each element of a list. */
    static List<String> words(Optional<Object> value) {
        if (value.isEmpty()) {
            return List.of();
        }
        return value.get() instanceof List<?> list
                ? list.stream().map(element -> word(ValueText.of(element))).toList()
                : List.of(word(ValueText.of(value.get())));
    }

    /** A text as one word: lower case, blanks as hyphens. */
    static String word(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
    }

    /** Whether there is anything in a field. */
    static boolean hasSomething(Optional<Object> value) {
        return value.filter(given -> !(given instanceof List<?> list && list.isEmpty())
                        && !(given instanceof String text && text.isBlank()))
                .isPresent();
    }
}
