package groupwright.workbench.shell;

import groupwright.definition.assessment.Rung;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.bench.Stage;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the rail shows.
 *
 * @param open how many things are open at each place; places that are not in it do not work yet
 * @param ladder how many requirements have reached each rung for the lead concept; nothing where none leads
 */
record RailSheet(Map<PlaceName, Integer> open, Optional<Ladder> ladder) {
    /** How far the project has come. */
    record Ladder(Map<Rung, Integer> counts) {
        Ladder {
            counts = Map.copyOf(counts);
        }

        int at(Rung rung) {
            return counts.getOrDefault(rung, 0);
        }

        /** All requirements, since each is stated. */
        int all() {
            return at(Rung.STATED);
        }
    }

    RailSheet {
        open = Map.copyOf(open);
    }

    /** The places of a stage, in order. */
    List<PlaceName> places(Stage stage) {
        return Arrays.stream(PlaceName.values())
                .filter(place -> place.stage() == stage && open.containsKey(place))
                .toList();
    }
}
