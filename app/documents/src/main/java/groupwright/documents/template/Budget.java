package groupwright.documents.template;

import org.commonmark.node.Node;

/** How many blocks a document may still get, so that loops in loops end. */
final class Budget {
    private final int most;
    private final Problems problems;
    private int used;

    Budget(int most, Problems problems) {
        this.most = most;
        this.problems = problems;
    }

    /** Takes blocks out of the budget; the first time it does not hold is reported where it happens. */
    boolean affords(int more, Node node, Origin origin) {
        boolean afforded = !isSpent();
        used = Math.min(used + more, most + 1);
        if (afforded && isSpent()) {
            problems.add(
                    Problem.Kind.TOO_MUCH,
                    node,
                    origin,
                    "the document would have more than " + most + " blocks here; ask for less");
        }
        return !isSpent();
    }

    boolean isSpent() {
        return used > most;
    }
}
