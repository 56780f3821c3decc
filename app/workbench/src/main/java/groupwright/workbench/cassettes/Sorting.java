package groupwright.workbench.cassettes;

import java.util.Comparator;
import java.util.Optional;

/**
 * In which order cassettes are listed.
 *
 * @param by nothing for the order of the set
 */
record Sorting(Optional<Measure> by, Way way) {
    static final Sorting AS_FOUND = new Sorting(Optional.empty(), Way.BEST_FIRST);

    /** Which end comes first. */
    enum Way {
        BEST_FIRST,
        WORST_FIRST
    }

    static Sorting by(Measure measure) {
        return new Sorting(Optional.of(measure), Way.BEST_FIRST);
    }

    /** Best first, then worst first, then as found. */
    Sorting next(Measure measure) {
        if (!by.equals(Optional.of(measure))) {
            return by(measure);
        }
        return way == Way.BEST_FIRST ? new Sorting(by, Way.WORST_FIRST) : AS_FOUND;
    }

    /** Stable: equal ones stay in the order of the set. */
    Comparator<Candidate> order() {
        Comparator<Candidate> none = (one, other) -> 0;
        Comparator<Candidate> best = by.<Comparator<Candidate>>map(m -> Comparator.comparingDouble(m::cost))
                .orElse(none);
        return way == Way.BEST_FIRST ? best : best.reversed();
    }
}
