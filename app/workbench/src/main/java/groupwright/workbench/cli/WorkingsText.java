package groupwright.workbench.cli;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.documents.numbers.AnswerText;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Workings as a tree for people; each question is worked out once. */
final class WorkingsText {
    private static final String STEP = "    ";
    private static final int LONG = 16;

    private final View view;
    private final AnswerText text;
    private final Set<Ask> shown = new HashSet<>();
    private final StringBuilder lines = new StringBuilder();

    WorkingsText(View view, AnswerText text) {
        this.view = view;
        this.text = text;
    }

    /** The whole tree of a question. */
    String of(Ask ask) {
        add(ask, "");
        return lines.toString();
    }

    private void add(Ask ask, String indent) {
        boolean first = shown.add(ask);
        Workings workings = view.explain(ask);
        line(
                indent,
                ask + " = " + (indent.isEmpty() ? whole(workings) : inShort(workings)) + band(workings)
                        + (first ? "" : ", see above"));
        if (first) {
            addWorkings(workings, indent + STEP);
        }
    }

    private String whole(Workings workings) {
        return text.of(workings.ask(), workings.answer()).text();
    }

    /** Long lists behind a number are counted; asked about themselves they are shown. */
    private String inShort(Workings workings) {
        return workings.answer() instanceof Series series && series.values().size() > LONG
                ? series.values().size() + " numbers"
                : whole(workings);
    }

    private String band(Workings workings) {
        return workings.answer() instanceof Quantity
                ? " (" + text.of(workings.ask().figure(), workings.band()) + ")"
                : "";
    }

    private void addWorkings(Workings workings, String indent) {
        Figure figure = workings.ask().figure();
        line(indent, figure.name() + ": " + figure.formula());
        missing(workings.answer())
                .forEach(input -> line(indent, "missing: " + input.address() + ", " + input.remedy()));
        inputs(workings.inputs(), indent);
        ReadText.of(workings.others()).forEach(read -> line(indent, "also read: " + read));
        workings.uses().forEach(use -> add(use.ask(), indent));
        if (!figure.leavesOut().isEmpty()) {
            line(indent, "leaves out: " + figure.leavesOut());
        }
        line(indent, "source: " + figure.source() + " (version " + figure.version() + ")");
    }

    private static List<MissingInput> missing(Answer answer) {
        if (answer instanceof Verdict verdict) {
            return verdict.missing();
        }
        return answer instanceof Missing missing ? missing.inputs() : List.of();
    }

    private void inputs(List<Workings.FieldInput> inputs, String indent) {
        int width = inputs.stream()
                .mapToInt(input -> input.address().toString().length())
                .max()
                .orElse(0);
        for (Workings.FieldInput input : inputs) {
            String address = input.address().toString();
            line(
                    indent,
                    address + " ".repeat(width - address.length()) + "  "
                            + text.input(input.value(), input.unit()).text());
        }
    }

    private void line(String indent, String content) {
        lines.append(indent).append(content).append('\n');
    }
}
