package groupwright.documents.project;

import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;

/** Ids in few words: runs of three or more neighbours become one range. */
final class IdRuns {
    private static final int SHORTEST = 3;

    private IdRuns() {}

    /**
     * For example {@code C-002, P-003–P-009}.
     *
     * @param ids sorted, each once
     */
    static String text(List<RecordId> ids) {
        List<String> parts = new ArrayList<>();
        int start = 0;
        while (start < ids.size()) {
            int end = start + 1;
            while (end < ids.size() && follows(ids.get(end - 1), ids.get(end))) {
                end++;
            }
            if (end - start >= SHORTEST) {
                parts.add(ids.get(start) + "–" + ids.get(end - 1));
            } else {
                ids.subList(start, end).forEach(id -> parts.add(id.text()));
            }
            start = end;
        }
        return String.join(", ", parts);
    }

    private static boolean follows(RecordId before, RecordId id) {
        return id.letters().equals(before.letters()) && id.number() == before.number() + 1;
    }
}
