package groupwright.workbench.claims;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.Optional;

/**
 * One answer that a claim rests on.
 *
 * @param name the figure in words
 * @param about its subject and parameters
 * @param then as it was approved last; nothing where it was no part of that
 * @param now today
 * @param limit what it must keep, in words; empty where only the value is watched
 * @param verdict whether it keeps that today
 * @param leads the record that asks for it
 * @param inputs what behind it is no longer as it was approved
 * @param tip for a missing value, what to fill in
 */
record Rest(
        Ask ask,
        String name,
        String about,
        Optional<ShownValue> then,
        ShownValue now,
        Kind kind,
        Move move,
        String limit,
        Optional<Verdict> verdict,
        Optional<Address> leads,
        List<InputChange> inputs,
        String tip) {
    /** What kind of answer. */
    enum Kind {
        NUMBER,
        WORD,
        MISSING
    }

    /** Since the approval. */
    enum Move {
        /** There is no approval to compare with. */
        NOT_APPROVED,
        SAME,
        MOVED,
        /** The inputs are the same, the formula is newer. */
        RECALCULATED
    }

    /** An input that is not as it was approved. */
    record InputChange(Address address, String label, String then, String now) {}

    Rest {
        inputs = List.copyOf(inputs);
    }

    boolean misses() {
        return verdict.filter(Verdict::missesForCertain).isPresent();
    }

    boolean isTooClose() {
        return verdict.filter(one -> one.certainty() == Verdict.Certainty.TOO_CLOSE_TO_CALL)
                .isPresent();
    }

    boolean hasMoved() {
        return move == Move.MOVED || move == Move.RECALCULATED;
    }
}
