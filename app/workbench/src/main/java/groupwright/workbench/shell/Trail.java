package groupwright.workbench.shell;

import groupwright.definition.figure.Ask;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures that were selected, to go back and forward among. */
final class Trail {
    private static final int LONGEST = 100;

    private final List<Ask> visited = new ArrayList<>();
    private int at = -1;

    /** A figure was selected; what lay ahead is forgotten. */
    void visit(Ask ask) {
        if (here().equals(Optional.of(ask))) {
            return;
        }
        while (visited.size() > at + 1) {
            visited.remove(visited.size() - 1);
        }
        visited.add(ask);
        if (visited.size() > LONGEST) {
            visited.remove(0);
        }
        at = visited.size() - 1;
    }

    Optional<Ask> here() {
        return at < 0 ? Optional.empty() : Optional.of(visited.get(at));
    }

    /** Goes back (−1) or forward (1); answers whether there was a way. */
    boolean walk(int by) {
        int next = at + by;
        boolean possible = next >= 0 && next < visited.size();
        at = possible ? next : at;
        return possible;
    }
}
