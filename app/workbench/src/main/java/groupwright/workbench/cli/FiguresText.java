package groupwright.workbench.cli;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.View;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.cli.TextTable.Side;
import java.util.List;

/** Figures of a project for people: the question as it can be asked again, the answer, how well it is known. */
final class FiguresText {
    private final View view;
    private final AnswerText text;

    FiguresText(View view, Reader reader) {
        this.view = view;
        this.text = new AnswerText(reader);
    }

    String of(Questions questions) {
        TextTable table = new TextTable(List.of(Side.LEFT, Side.LEFT, Side.LEFT));
        for (Ask ask : questions.asks()) {
            Answer answer = view.ask(ask);
            table.row(ask.toString(), shown(ask, answer), answer instanceof Quantity ? band(ask) : "");
        }
        StringBuilder lines = new StringBuilder(table.toString());
        if (questions.asks().isEmpty()) {
            lines.append("No figure can be asked: the project has no records for it yet.\n");
        }
        for (Questions.LeftOut left : questions.leftOut()) {
            lines.append("Left out: ")
                    .append(left.figure())
                    .append(", ")
                    .append(left.wrong())
                    .append("; ")
                    .append(left.remedy())
                    .append('\n');
        }
        return lines.toString();
    }

    private String shown(Ask ask, Answer answer) {
        return answer instanceof Missing missing
                ? "missing: " + text.missing(missing)
                : text.of(ask, answer).text();
    }

    private String band(Ask ask) {
        return text.of(ask.figure(), view.band(ask));
    }
}
