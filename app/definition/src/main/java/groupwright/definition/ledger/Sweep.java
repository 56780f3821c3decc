package groupwright.definition.ledger;

import java.util.ArrayDeque;
import java.util.Deque;

/** Drops answers that are stale and that nothing depends on: they were asked once and may never be again. */
final class Sweep {
    private final AnswerTable answers;
    private final Deque<AnswerNode> open;

    private Sweep(AnswerTable answers) {
        this.answers = answers;
        this.open = new ArrayDeque<>(answers.all());
    }

    /** O(answers + what the dropped ones read). */
    static void of(AnswerTable answers) {
        Sweep sweep = new Sweep(answers);
        while (!sweep.open.isEmpty()) {
            sweep.look(sweep.open.remove());
        }
    }

    private void look(AnswerNode node) {
        if (isNeeded(node) || !answers.remove(node)) {
            return;
        }
        Node[] inputs = node.inputs();
        if (node.band != null) {
            for (Node input : node.band.inputs()) {
                letGo(input);
            }
            node.band.unwire();
        }
        node.unwire();
        for (Node input : inputs) {
            letGo(input);
        }
    }

    private void letGo(Node input) {
        if (input instanceof AnswerNode answer) {
            open.add(answer);
        } else if (input instanceof BandNode band) {
            open.add(band.of);
        }
    }

    private static boolean isNeeded(AnswerNode node) {
        if (node.state == Derived.State.SETTLED) {
            return true;
        }
        boolean hasBand = node.band != null && node.band.inputs().length > 0;
        return node.dependentCount() > (hasBand ? 1 : 0) || (hasBand && node.band.dependentCount() > 0);
    }
}
