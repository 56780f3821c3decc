package groupwright.workbench.cassettes;

import groupwright.drivetrain.search.DriverBody;
import groupwright.drivetrain.search.ForbiddenCogs;
import groupwright.drivetrain.search.ForcedCogs;
import groupwright.drivetrain.search.JumpsNeverShrink;
import groupwright.drivetrain.search.LargestJump;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.LikePositions;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.WorstMismatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The limits among what was typed, in the order in which they are counted. */
final class LimitReading {
    /** Makes something, or says at a field why it cannot be. */
    interface Trying {
        <T> Optional<T> at(Entry entry, Supplier<T> made);
    }

    private final Draft draft;
    private final TypedTeeth typed;
    private final Trying trying;
    private final List<DraftReading.Placed> limits = new ArrayList<>();

    LimitReading(Draft draft, TypedTeeth typed, Trying trying) {
        this.draft = draft;
        this.typed = typed;
        this.trying = trying;
    }

    List<DraftReading.Placed> all() {
        typed.whole(Entry.DRIVER).ifPresent(teeth -> add(Entry.DRIVER, () -> new DriverBody(teeth)));
        typed.number(Entry.STEP).ifPresent(pct -> add(Entry.STEP, () -> new LargestStep(pct, from(Entry.STEP_FROM))));
        typed.whole(Entry.JUMP).ifPresent(teeth -> add(Entry.JUMP, () -> new LargestJump(teeth)));
        List<Integer> with = typed.list(Entry.WITH);
        if (!with.isEmpty()) {
            add(Entry.WITH, () -> ForcedCogs.of(with));
        }
        List<Integer> without = typed.list(Entry.WITHOUT);
        if (!without.isEmpty()) {
            add(Entry.WITHOUT, () -> ForbiddenCogs.of(without));
        }
        typed.number(Entry.MISMATCH)
                .ifPresent(mm -> add(Entry.MISMATCH, () -> new WorstMismatch(mm, from(Entry.MISMATCH_FROM))));
        typed.whole(Entry.POSITIONS)
                .ifPresent(least -> add(Entry.POSITIONS, () -> new LikePositions(least, from(Entry.POSITIONS_FROM))));
        if (draft.jumps() == Draft.Jumps.NEVER_SHRINK) {
            add(Entry.JUMP, JumpsNeverShrink::new);
        }
        return limits;
    }

    private int from(Entry entry) {
        return typed.whole(entry).orElse(0);
    }

    private void add(Entry entry, Supplier<Limit> limit) {
        trying.at(entry, limit).ifPresent(made -> limits.add(new DraftReading.Placed(entry, made)));
    }
}
