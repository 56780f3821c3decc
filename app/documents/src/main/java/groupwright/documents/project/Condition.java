package groupwright.documents.project;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the section of an {@code if} is filled in: reads the condition and answers it from the project. */
record Condition(Sheet sheet, ProjectWords words, Variables variables) {
    private static final String EXPECTED = "write for example \"rider.description\", \"requirement.state is agreed\","
            + " \"gear-range lead at least 480\" or \"any claim state=approved\", with \"not\" before it for the opposite";
    private static final Pattern FIGURE = Pattern.compile("(.+?)\\s+at\\s+(least|most)(?:\\s+(.*))?");
    private static final Pattern LIMIT = Pattern.compile("([-−]?[0-9]+(?:[.,][0-9]+)?)\\s*(.*)");

    /**
     * Whether a condition holds.
     *
     * @throws Invalid if it is none; says what is expected
     */
    boolean holds(String text) {
        return text.equals("not") || text.startsWith("not ")
                ? !plain(text.substring(3).strip())
                : plain(text.strip());
    }

    private boolean plain(String text) {
        String[] parts = text.split("\\s+", 3);
        Matcher figure = FIGURE.matcher(text);
        if (parts[0].equals("any")) {
            String selection = text.substring(3).strip();
            return !Selection.parse(selection, sheet, variables).records(sheet).isEmpty();
        } else if (figure.matches()) {
            return figure(figure);
        } else if (parts.length > 1 && parts[1].equals("is")) {
            return is(parts[0], parts.length > 2 ? parts[2] : "");
        } else if (parts.length == 1 && !parts[0].isEmpty()) {
            return hasSomething(parts[0]);
        }
        throw new Invalid("", text.isEmpty() ? "no condition is given" : "\"" + text + "\" is no condition", EXPECTED);
    }

    private boolean hasSomething(String name) {
        if (words.contains(name)) {
            return !words.value(name).isBlank();
        }
        return FieldText.hasSomething(RecordFields.value(recordOf(name), field(name)));
    }

    private boolean is(String name, String wanted) {
        if (wanted.isEmpty()) {
            throw new Invalid("", "nothing stands behind \"is\"", EXPECTED);
        } else if (words.contains(name)) {
            return FieldText.word(words.value(name)).equals(FieldText.word(wanted));
        }
        Entry record = recordOf(name);
        String kind = name.substring(0, name.indexOf('.'));
        return Selection.filter(kind, field(name), wanted, variables).keeps(record);
    }

    private Entry recordOf(String name) {
        int dot = name.indexOf('.');
        String word = dot < 0 ? name : name.substring(0, dot);
        if (dot < 0 || !Kinds.contains(word)) {
            throw words.unknown(name, EXPECTED);
        }
        RecordFields.component(word, field(name)); // says so where there is no such field
        return variables.need(word);
    }

    private static String field(String name) {
        return name.substring(name.indexOf('.') + 1);
    }

    private boolean figure(Matcher condition) {
        String question = variables.resolve(condition.group(1));
        Matcher limit = LIMIT.matcher(
                condition.group(3) == null ? "" : condition.group(3).strip());
        if (!limit.matches() || !Settings.isNumber(plainNumber(limit.group(1)))) {
            throw new Invalid(
                    "",
                    "no number stands behind \"at " + condition.group(2) + "\"",
                    "write for example " + condition.group(1) + " at " + condition.group(2) + " 480");
        }
        Answer answer = sheet.view().ask(sheet.ask(question));
        if (answer instanceof Missing) {
            return false;
        } else if (!(answer instanceof Quantity quantity)) {
            throw new Invalid("", condition.group(1) + " gives no single number", "compare a figure that does");
        } else {
            String unit = quantity.unit().symbol();
            if (!limit.group(2).isEmpty() && !limit.group(2).equals(unit)) {
                throw new Invalid(
                        "",
                        condition.group(1) + " is not in \"" + limit.group(2) + "\"",
                        unit.isEmpty()
                                ? "leave the unit out"
                                : "write the number in " + unit + ", or leave the unit out");
            }
            double number = Double.parseDouble(plainNumber(limit.group(1)));
            return condition.group(2).equals("least") ? quantity.value() >= number : quantity.value() <= number;
        }
    }

    private static String plainNumber(String text) {
        return text.replace('−', '-').replace(',', '.');
    }
}
