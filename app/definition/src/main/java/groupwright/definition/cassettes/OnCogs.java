package groupwright.definition.cassettes;

import groupwright.definition.record.Criterion;
import groupwright.definition.record.Requirement;

/** A criterion whose answer changes with the cogs, or that limits a weight. */
public record OnCogs(Requirement requirement, Criterion criterion) {
    /** As checks name it, for example {@code R-005.k1}. */
    public String name() {
        return requirement.id() + "." + criterion.id();
    }

    /** Whether it limits a weight, in which the cassette stands with an estimate. */
    boolean isWeight() {
        return criterion.figure().startsWith("mass-");
    }
}
