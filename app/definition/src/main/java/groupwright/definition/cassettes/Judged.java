package groupwright.definition.cassettes;

import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A cassette against the requirements of a project.
 *
 * @param cassette the cogs
 * @param held each criterion with the worst verdict over its rider groups and bikes, in the order of requirements
 * @param byRiders the worst verdict of the requirements about each rider group
 */
public record Judged(Cassette cassette, List<Held> held, Map<RecordId, Verdict> byRiders) {
    public Judged {
        held = List.copyOf(held);
        byRiders = new TreeMap<>(byRiders);
    }

    /** A criterion with its verdict. */
    public record Held(OnCogs criterion, Verdict verdict) {}

    /** The criteria it misses, certain or not. */
    public List<Held> missed() {
        return held.stream()
                .filter(one -> one.verdict().outcome() == Verdict.Outcome.MISSES)
                .toList();
    }

    /** Whether it misses nothing; what lacks input does not count. */
    public boolean missesNothing() {
        return missed().isEmpty();
    }

    /** The worst verdict of the requirements about a rider group; nothing where none is. */
    public Optional<Verdict> forRiders(RecordId riders) {
        return Optional.ofNullable(byRiders.get(riders));
    }
}
