package groupwright.workbench.riders;

import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import java.util.List;

/**
 * One need.
 *
 * @param words the rider's, unpolished, in quotation marks
 * @param against needs that ask for the opposite, whoever says so
 * @param answeredBy requirements in use that answer it
 * @param retired why it is no longer followed; empty while it is
 */
record NeedRow(
        RecordId id,
        String words,
        List<RecordId> riders,
        String source,
        Need.Importance importance,
        String date,
        List<RecordId> against,
        List<RecordId> answeredBy,
        String note,
        String retired) {
    NeedRow {
        riders = List.copyOf(riders);
        against = List.copyOf(against);
        answeredBy = List.copyOf(answeredBy);
    }

    boolean isCurrent() {
        return retired.isEmpty();
    }

    boolean isUnanswered() {
        return isCurrent() && answeredBy.isEmpty();
    }
}
