package groupwright.workbench.requirements;

import groupwright.definition.record.Address;
import groupwright.workbench.bench.Bench;
import java.util.List;
import java.util.Optional;

/** What the last step changed of the requirements. */
final class Since {
    /** Fields whose change one sees in the table. */
    private static final List<String> SEEN = List.of("title", "statement", "criteria", "state", "retired", "weight");

    private static final List<String> OF_CRITERIA =
            List.of("figure", "parameters", "comparator", "target", "upper", "unit");

    private final Bench.Recent recent;

    Since(Bench.Recent recent) {
        this.recent = recent;
    }

    /** What stood in place of the target before. */
    Optional<Object> target(Row.Measured row) {
        return recent.before(row.target());
    }

    /** Whether the value is another one now. */
    boolean value(Row row) {
        return row.ask().filter(recent.asks()::contains).isPresent();
    }

    /** Whether anything of a requirement changed: a field, a value, or its verdict. O(rows of it). */
    boolean any(Listed listed) {
        return listed.verdict().filter(recent.asks()::contains).isPresent()
                || recent.before(Address.of(listed.id())).isPresent()
                || listed.rows().stream().anyMatch(row -> value(row) || isCriterionOf(row))
                || SEEN.stream()
                        .anyMatch(field ->
                                recent.before(Address.of(listed.id(), field)).isPresent());
    }

    private boolean isCriterionOf(Row row) {
        Address criterion = Address.of(row.requirement(), "criteria", row.criterion());
        return row instanceof Row.Measured
                && (recent.before(criterion).isPresent()
                        || OF_CRITERIA.stream()
                                .anyMatch(field ->
                                        recent.before(criterion.child(field)).isPresent()));
    }
}
