package groupwright.workbench.cassettes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two measures set against each other.
 *
 * @param across along the level axis
 * @param up along the upright one
 */
record TradeOff(Measure across, Measure up) {
    TradeOff {
        if (across == up) {
            throw new IllegalArgumentException("a measure is not set against itself: " + across);
        }
    }

    /** With another level axis; if that is the upright one, they change places. */
    TradeOff across(Measure other) {
        return other == up ? new TradeOff(up, across) : new TradeOff(other, up);
    }

    /** With another upright axis; if that is the level one, they change places. */
    TradeOff up(Measure other) {
        return other == across ? new TradeOff(up, across) : new TradeOff(across, other);
    }

    /** Those that none of the others beats in these two alone, best across first; of equal ones the first. */
    List<Candidate> best(List<Candidate> all) {
        List<Candidate> sorted = all.stream()
                .sorted(Comparator.<Candidate>comparingDouble(across::cost).thenComparingDouble(up::cost))
                .toList();
        List<Candidate> best = new ArrayList<>();
        for (Candidate candidate : sorted) {
            if (best.isEmpty() || up.cost(candidate) < up.cost(best.get(best.size() - 1))) {
                best.add(candidate);
            }
        }
        return best;
    }
}
