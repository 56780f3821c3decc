package groupwright.workbench.shell;

import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import java.util.List;

/** The places that work, in any order. */
final class Places {
    private Places() {}

    static List<Place> all(Bench bench) {
        return List.of();
    }
}
