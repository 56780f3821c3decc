package groupwright.workbench.claims;

import groupwright.definition.record.RecordId;
import java.util.List;

/**
 * One claim in full.
 *
 * @param state as on screen and page
 * @param detail why it stands so, worked out
 * @param reason why it stands so, as somebody wrote
 * @param basis what it rests on, in words
 * @param rests every answer it rests on
 * @param broken what it should rest on and cannot
 * @param approvals the last one first
 */
record ClaimDetail(
        RecordId id,
        ClaimGroup group,
        String state,
        String detail,
        String reason,
        Wording wording,
        Wording basis,
        String channel,
        List<Rest> rests,
        List<String> broken,
        List<Signed> approvals) {
    /** An approval in words: who, when, on which values. */
    record Signed(String by, String date, List<String> values) {
        Signed {
            values = List.copyOf(values);
        }
    }

    ClaimDetail {
        rests = List.copyOf(rests);
        broken = List.copyOf(broken);
        approvals = List.copyOf(approvals);
    }

    /** Whether some input or value behind it is not as it was approved. */
    boolean hasChangedInputs() {
        return rests.stream().anyMatch(rest -> !rest.inputs().isEmpty());
    }
}
