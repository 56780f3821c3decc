package groupwright.definition.assessment;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a claim stands today. */
public enum ClaimState {
    /** Approved, still true, and what it rests on is as it was approved. */
    HOLDS,
    /** Something it rests on is no longer as it was approved, or it is no longer true. */
    CHANGED_SINCE_APPROVAL,
    /** The inputs are as approved, but a newer formula gives another number. */
    RECALCULATED,
    /** Nothing supports it, or what should is missing. */
    UNSUPPORTED,
    /** Not approved yet. */
    PROPOSED,
    /** Taken back. */
    WITHDRAWN;

    /** As on screen and page, for example {@code changed since approval}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The state a word names. */
    public static Optional<ClaimState> of(String word) {
        return Arrays.stream(values())
                .filter(state -> state.word().equals(word))
                .findFirst();
    }
}
