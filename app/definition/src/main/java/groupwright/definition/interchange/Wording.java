package groupwright.definition.interchange;

import groupwright.definition.record.FieldType;

/** What a field should hold, in words, for problems. */
final class Wording {
    private Wording() {}

    static String isNot(FieldType type) {
        if (type instanceof FieldType.Text) {
            return "no text";
        } else if (type instanceof FieldType.Whole) {
            return "no whole number";
        } else if (type instanceof FieldType.Number) {
            return "no number";
        } else if (type instanceof FieldType.Day) {
            return "no date";
        } else if (type instanceof FieldType.OwnId || type instanceof FieldType.Reference) {
            return "no id of a record";
        } else if (type instanceof FieldType.ListOf) {
            return "no list";
        }
        return "not what belongs here";
    }

    static String sample(FieldType type) {
        if (type instanceof FieldType.Text) {
            return "\"text\"";
        } else if (type instanceof FieldType.Whole) {
            return "1";
        } else if (type instanceof FieldType.Number) {
            return "50";
        } else if (type instanceof FieldType.Day) {
            return "\"2026-03-09\"";
        } else if (type instanceof FieldType.OwnId) {
            return "\"R-001\"";
        } else if (type instanceof FieldType.Reference reference) {
            return "\""
                    + groupwright.definition.record.RecordKinds.of(reference.kind())
                            .letters() + "-001\"";
        } else if (type instanceof FieldType.ListOf list) {
            return "[" + sample(list.element()) + "]";
        } else if (type instanceof FieldType.Choice choice) {
            return "\""
                    + groupwright.definition.ledger.ValueText.word(choice.type().getEnumConstants()[0]) + "\"";
        }
        return "{ … }";
    }
}
