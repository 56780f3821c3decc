package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.Judged;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Measures;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A cassette with what is known of it.
 *
 * @param longestWaitS the longest wait for a like position on the smallest ring, at {@link #CADENCE_RPM}
 * @param judged against the requirements; nothing where that was stopped before
 */
record Candidate(Found found, double longestWaitS, Optional<Judged> judged) {
    /** At which one shifts, as the figure of waits takes it. */
    static final double CADENCE_RPM = 70;

    static Candidate of(Found found, List<Integer> rings, Optional<Judged> judged) {
        Chainring smallest = new Chainring(rings.stream().min(Integer::compare).orElseThrow());
        double wait = Steps.of(found.cassette()).stream()
                .mapToDouble(step -> ShiftPositions.longestWaitS(step, smallest, CADENCE_RPM))
                .max()
                .orElse(0);
        return new Candidate(found, wait, judged);
    }

    static Candidate of(Cassette cassette, SprocketMass mass, List<Integer> rings, Optional<Judged> judged) {
        return of(new Found(cassette, Measures.of(cassette, mass)), rings, judged);
    }

    Cassette cassette() {
        return found.cassette();
    }

    /** Its cogs in words. */
    String cogs() {
        return cogs(cassette());
    }

    static String cogs(Cassette cassette) {
        return cassette.cogs().stream().map(Cog::teeth).map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** Whether it misses nothing that some rider groups ask for; what was not judged is not known to. */
    boolean suits(Collection<RecordId> riders) {
        return judged.filter(one -> riders.stream()
                        .noneMatch(id -> one.forRiders(id)
                                .filter(verdict -> verdict.outcome() == Verdict.Outcome.MISSES)
                                .isPresent()))
                .isPresent();
    }
}
