package groupwright.documents.project;

import groupwright.definition.figure.Nearest;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Component;
import groupwright.definition.record.Entry;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Which records a loop goes through: {@code KIND [of NAME] [field=word …]}.
 *
 * @param word of the kind
 * @param of only records that refer to this one or that it refers to
 * @param filters all of which must hold
 */
record Selection(String word, Optional<Entry> of, List<Filter> filters) {
    private static final String EXPECTED =
            "write a kind, maybe \"of\" and a name, maybe field=word, for example requirement"
                    + " of rider state=agreed";

    /** A field and the word it must hold. */
    record Filter(String field, String wanted) {
        boolean keeps(Entry record) {
            return FieldText.words(RecordFields.value(record, field)).contains(FieldText.word(wanted));
        }
    }

    Selection {
        filters = List.copyOf(filters);
    }

    /**
     * Reads a selection.
     *
     * @param variables what the words of loops around stand for
     * @throws Invalid if it is none; says what is expected
     */
    static Selection parse(String text, Sheet sheet, Variables variables) {
        List<String> words = List.of(text.strip().split("\\s+"));
        if (words.get(0).isEmpty()) {
            throw new Invalid("", "no kind of record is named", EXPECTED);
        }
        String word = words.get(0);
        Kinds.of(word);
        int at = 1;
        Optional<Entry> of = Optional.empty();
        if (words.size() > 1 && words.get(1).equals("of")) {
            if (words.size() < 3) {
                throw new Invalid("", "nothing stands behind \"of\"", EXPECTED);
            }
            of = Optional.of(record(words.get(2), sheet, variables));
            at = 3;
        }
        List<Filter> filters = new ArrayList<>();
        for (String filter : words.subList(at, words.size())) {
            filters.add(filter(word, filter, variables));
        }
        return new Selection(word, of, filters);
    }

    private static Entry record(String name, Sheet sheet, Variables variables) {
        if (Kinds.contains(name)) {
            return variables.need(name);
        }
        RecordId id = name.equals("lead")
                ? sheet.lead()
                : RecordId.parse(name)
                        .orElseThrow(() -> new Invalid(
                                "",
                                "\"" + name + "\" behind \"of\" names no record",
                                "write the word of a loop around this, lead, or an id such as G-001"));
        return sheet.existing(id);
    }

    private static Filter filter(String word, String text, Variables variables) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new Invalid("", "\"" + text + "\" is not field=word", EXPECTED);
        }
        return filter(word, text.substring(0, equals), text.substring(equals + 1), variables);
    }

    /**
     * A filter on a field.
     *
     * @throws Invalid if the kind has no such field, or the field can never hold the word
     */
    static Filter filter(String word, String field, String wanted, Variables variables) {
        check(RecordFields.component(word, field), field, wanted);
        return new Filter(field, variables.resolve(wanted));
    }

    private static void check(Component component, String field, String wanted) {
        FieldType type = component.type() instanceof FieldType.ListOf list ? list.element() : component.type();
        if (type instanceof FieldType.Nested || type instanceof FieldType.Parameters) {
            throw new Invalid("", "the field " + field + " holds objects, no words", "compare another field");
        }
        if (type instanceof FieldType.Choice choice) {
            List<String> words = Arrays.stream(choice.type().getEnumConstants())
                    .map(ValueText::word)
                    .toList();
            if (!words.contains(FieldText.word(wanted))) {
                throw new Invalid(
                        "",
                        "the field " + field + " is never \"" + wanted + "\"",
                        Nearest.of(FieldText.word(wanted), words)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("its words are " + String.join(", ", words)));
            }
        }
    }

    /** The current records that are selected, in the order of ids; bikes only where the document speaks of them. Cost: all records of the kind with their fields. */
    List<Entry> records(Sheet sheet) {
        List<RecordId> fromIt = of.map(RecordFields::references).orElse(List.of());
        List<Entry> kept = new ArrayList<>();
        for (Entry record : sheet.definition().all(Kinds.of(word))) {
            if (record.isCurrent()
                    && (!(record instanceof Bike) || sheet.chosen().holds(record.id()))
                    && filters.stream().allMatch(filter -> filter.keeps(record))
                    && (of.isEmpty()
                            || fromIt.contains(record.id())
                            || RecordFields.references(record).contains(of.get().id()))) {
                kept.add(record);
            }
        }
        return kept;
    }
}
