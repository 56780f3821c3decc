package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.sensitivity.Effect;
import groupwright.definition.sensitivity.Movers;
import groupwright.definition.sensitivity.StatedChange;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Measured;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.cli.TextTable.Side;
import java.util.List;

/**
 * What moves a number, for people and for machines.
 *
 * @param opened the project
 * @param ask the number
 * @param movers what moves it
 */
record MovesReport(OpenProject opened, Ask ask, Movers movers) {
    /**
     * Tries every number behind an answer.
     *
     * @throws Refusal if the answer is no number
     */
    static MovesReport of(OpenProject opened, Ask ask, StatedChange change) {
        Answer answer = opened.view().ask(ask);
        if (answer instanceof Missing missing) {
            throw Refusal.of(
                    ask + " has no answer",
                    missing.inputs().get(0).address() + ": "
                            + missing.inputs().get(0).remedy());
        } else if (!(answer instanceof Quantity)) {
            throw Refusal.of(ask + " is no single number", "ask what moves a figure that gives one");
        }
        return new MovesReport(opened, ask, Movers.of(opened.view(), ask, change));
    }

    ObjectNode json() {
        ObjectNode answer = JsonText.start();
        answer.set(
                "figure",
                AnswerJson.of(ask, opened.view().ask(ask), opened.view().band(ask)));
        answer.set("change_pct", JsonText.number(movers.change().pct()));
        answer.set("moves", JsonText.list(movers.moving(), MovesReport::move));
        answer.put("unmoved", movers.unmoved()).put("fixed", movers.fixed());
        answer.set("problems", JsonText.problems(opened.problems()));
        return answer;
    }

    private static ObjectNode move(Effect effect) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("record", effect.address().record().text())
                .put("field", effect.address().field());
        node.set("from", JsonText.number(effect.from()));
        node.set("to", JsonText.number(effect.to()));
        node.set("before", JsonText.number(effect.before().value()));
        if (effect.after() instanceof Quantity after) {
            node.set("after", JsonText.number(after.value()));
            node.set("difference", JsonText.number(effect.difference().orElseThrow()));
        } else if (effect.after() instanceof Missing missing) {
            AnswerJson.addMissing(node, missing.inputs());
        }
        return node;
    }

    String text(Reader reader) {
        AnswerText text = new AnswerText(reader);
        StringBuilder lines = new StringBuilder(
                ask + " = " + text.of(ask, opened.view().ask(ask)).text() + "\n");
        lines.append("each number behind it changed alone by ")
                .append(reader.exact(movers.change().pct()));
        lines.append(" %, counts by 1; what moves it most comes first\n");
        if (!movers.moving().isEmpty()) {
            lines.append('\n').append(table(reader));
        }
        lines.append("\nnot moved by ").append(movers.unmoved()).append(" other numbers");
        lines.append(movers.fixed() == 0 ? "" : "; " + movers.fixed() + " could not be changed alone");
        return lines.append('\n').toString();
    }

    private TextTable table(Reader reader) {
        TextTable table = new TextTable(List.of(Side.LEFT, Side.LEFT, Side.LEFT, Side.RIGHT));
        table.row("input", "from → to", "answer", "difference");
        int decimals = ask.figure().decimals() + 1;
        for (Effect effect : movers.moving()) {
            Measured measured = reader.in(effect.before().unit().symbol());
            String before = measured.number(effect.before().value(), decimals);
            String after =
                    effect.after() instanceof Quantity quantity ? measured.number(quantity.value(), decimals) : "none";
            table.row(
                    effect.address().toString(),
                    reader.exact(effect.from()) + " → " + reader.exact(effect.to()),
                    before + " → " + after,
                    effect.difference().isPresent()
                            ? reader.signed(effect.difference().getAsDouble(), decimals)
                            : "");
        }
        return table;
    }
}
