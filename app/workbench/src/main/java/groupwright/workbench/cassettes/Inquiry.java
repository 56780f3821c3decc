package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.search.Question;
import java.util.List;

/**
 * What is to be found, and in what it is judged.
 *
 * @param rings the rings it runs with, largest first
 */
record Inquiry(RecordId concept, Question question, List<Integer> rings) {
    Inquiry {
        rings = List.copyOf(rings);
        if (rings.isEmpty()) {
            throw new IllegalArgumentException("a cassette is judged with at least one ring");
        }
    }
}
