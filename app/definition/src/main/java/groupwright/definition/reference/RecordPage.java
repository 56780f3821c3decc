package groupwright.definition.reference;

import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The reference page of all record kinds, as Markdown. */
public final class RecordPage {
    private final StringBuilder text = new StringBuilder();
    private final Set<Shape<?>> nested = new LinkedHashSet<>();

    private RecordPage() {}

    /** The whole page. */
    public static String markdown() {
        RecordPage page = new RecordPage();
        page.text
                .append("# Records\n\n")
                .append("One record is one JSON file, named after its id. Generated from the Java");
        page.text.append(" records; do not edit by hand.\n\n");
        page.text.append(
                "A number may stand alone or with its band: `{\"value\": 0.016, \"plusMinus\": 0.0016}`. Fields that");
        page.text.append(" no description names are kept as they are.\n");
        for (RecordKind<?> kind : RecordKinds.all()) {
            String where = kind.folder().isEmpty()
                    ? "`project.json`"
                    : "`" + kind.folder() + "/" + kind.letters() + "-001.json`";
            page.section(capital(kind.noun()) + ", " + where, kind.shape());
        }
        List<Shape<?>> open = new ArrayList<>(page.nested);
        while (!open.isEmpty()) {
            Shape<?> shape = open.remove(0);
            int known = page.nested.size();
            page.section(name(shape), shape);
            page.nested.stream().skip(known).forEach(open::add);
        }
        return page.text.toString();
    }

    private void section(String title, Shape<?> shape) {
        text.append("\n## ").append(title).append("\n\n");
        text.append("| field | holds | unit | limits | when missing | meaning |\n|---|---|---|---|---|---|\n");
        for (Component component : shape.components()) {
            text.append("| `").append(component.name()).append("` | ");
            text.append(holds(component.type()))
                    .append(" | ")
                    .append(component.unit())
                    .append(" | ");
            text.append(limits(component))
                    .append(" | ")
                    .append(missing(component))
                    .append(" | ");
            text.append(component.help()).append(" |\n");
        }
    }

    private String holds(FieldType type) {
        if (type instanceof FieldType.Text) {
            return "text";
        } else if (type instanceof FieldType.Whole) {
            return "whole number";
        } else if (type instanceof FieldType.Number) {
            return "number";
        } else if (type instanceof FieldType.Choice choice) {
            return Arrays.stream(choice.type().getEnumConstants())
                    .map(word -> "`" + ValueText.word(word) + "`")
                    .collect(Collectors.joining(", "));
        } else if (type instanceof FieldType.Day) {
            return "date";
        } else if (type instanceof FieldType.OwnId) {
            return "its own id";
        } else if (type instanceof FieldType.Reference reference) {
            return "id of a " + RecordKinds.of(reference.kind()).noun();
        } else if (type instanceof FieldType.Parameters) {
            return "parameters of a figure";
        } else if (type instanceof FieldType.ListOf list) {
            return "list: " + holds(list.element());
        }
        Shape<?> shape = ((FieldType.Nested) type).shape();
        nested.add(shape);
        return "[" + name(shape) + "](#"
                + name(shape).toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ")";
    }

    private static String limits(Component component) {
        String low = Double.isInfinite(component.least()) ? "" : ValueText.number(component.least());
        String high = Double.isInfinite(component.most()) ? "" : ValueText.number(component.most());
        return low.isEmpty() && high.isEmpty() ? "" : low + " to " + high;
    }

    private static String missing(Component component) {
        if (component.optional() == Component.Presence.OPTIONAL) {
            return "unknown";
        }
        return component.missing().map(usual -> "`" + usual + "`").orElse("refused");
    }

    /** {@code PriceBreak} is "Price break". */
    private static String name(Shape<?> shape) {
        return capital(shape.type()
                .getSimpleName()
                .replaceAll("(?<=[a-z])([A-Z])", " $1")
                .toLowerCase(java.util.Locale.ROOT));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
