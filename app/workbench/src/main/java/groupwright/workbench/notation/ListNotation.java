package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Lists of plain values in one line (texts: one a line).
 *
 * @param parts what may stand between two values
 * @param between what is written between two values
 */
record ListNotation(
        FieldWords words, Component component, FieldType.ListOf type, Notation element, Pattern parts, String between)
        implements Notation {
    private static final Pattern WHOLES = Pattern.compile("\\s*[,;\u2013-]\\s*|\\s+");
    private static final Pattern NUMBERS =
            Pattern.compile("\\s*;\\s*|,\\s+|(?<![±+-])(?<!\\+/-)\\s+(?!\\s*(?:±|\\+/?-))");
    private static final Pattern IDS = Pattern.compile("\\s*[,;]\\s*");

    static Notation of(FieldWords words, Component component, FieldType.ListOf type, Notation element) {
        if (type.element() instanceof FieldType.Whole) {
            return new ListNotation(words, component, type, element, WHOLES, " ");
        } else if (type.element() instanceof FieldType.Number) {
            return new ListNotation(words, component, type, element, NUMBERS, "; ");
        } else if (type.element() instanceof FieldType.Reference) {
            return new ListNotation(words, component, type, element, IDS, ", ");
        }
        return new ListNotation(words, component, type, element, IDS, "\n");
    }

    @Override
    public String shown(Optional<?> value) {
        return value.map(list ->
                        ((List<?>) list).stream().map(this::elementShown).collect(Collectors.joining(between)))
                .orElse("");
    }

    private String elementShown(Object value) {
        return type.element() instanceof FieldType.Reference ? value.toString() : element.shown(Optional.of(value));
    }

    @Override
    public Typed read(String text) {
        if (type.element() instanceof FieldType.Text) {
            return Typed.of(text.lines().filter(line -> !line.isBlank()).toList()); // each line as it is
        }
        List<Object> values = new ArrayList<>();
        String typed = text.strip();
        for (String part : typed.isEmpty() ? new String[0] : parts.split(typed, -1)) {
            if (part.isBlank()) {
                return words.refused("list.gap", Shortened.of(text));
            }
            Typed one = element.read(part);
            if (one instanceof Typed.Refused) {
                return one;
            }
            ((Typed.Value) one).value().ifPresent(values::add);
        }
        if (type.element() instanceof FieldType.Reference
                && values.stream().distinct().count() < values.size()) {
            return words.refused("list.twice", FieldWords.label(component));
        }
        return values.size() >= type.least() && values.size() <= type.most()
                ? Typed.of(List.copyOf(values))
                : size(values.size());
    }

    private Typed size(int size) {
        String least = Integer.toString(type.least());
        return type.most() == Integer.MAX_VALUE
                ? words.refused("list.least", FieldWords.label(component), least)
                : words.refused(
                        "list.size",
                        FieldWords.label(component),
                        Integer.toString(size),
                        least,
                        Integer.toString(type.most()));
    }
}
