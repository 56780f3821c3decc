package groupwright.documents.project;

import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ids in few words: runs of three or more neighbours become one range. */
final class IdRuns {
    private static final int SHORTEST = 3;
    private static final int MOST_RUNS = 3;

    private IdRuns() {}

    /**
     * For example {@code C-002, P-003–P-009}.
     *
     * @param ids sorted, each once
     */
    static String text(List<RecordId> ids) {
        return String.join(
                ", ", kinds(ids).stream().flatMap(kind -> runs(kind).stream()).toList());
    }

    /** The same, but kinds in many runs only counted, for example {@code C-002, 31 / P-001–P-037}. */
    static String counted(List<RecordId> ids) {
        return String.join(", ", kinds(ids).stream().map(IdRuns::ofKind).toList());
    }

    private static String ofKind(List<RecordId> ids) {
        List<String> runs = runs(ids);
        return runs.size() <= MOST_RUNS
                ? String.join(", ", runs)
                : ids.size() + " / " + ids.get(0) + "–" + ids.get(ids.size() - 1);
    }

    private static List<List<RecordId>> kinds(List<RecordId> ids) {
        Map<String, List<RecordId>> kinds = new LinkedHashMap<>();
        ids.forEach(id ->
                kinds.computeIfAbsent(id.letters(), any -> new ArrayList<>()).add(id));
        return List.copyOf(kinds.values());
    }

    private static List<String> runs(List<RecordId> ids) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        while (start < ids.size()) {
            int end = start + 1;
            while (end < ids.size() && ids.get(end).number() == ids.get(end - 1).number() + 1) {
                end++;
            }
            if (end - start >= SHORTEST) {
                runs.add(ids.get(start) + "–" + ids.get(end - 1));
            } else {
                ids.subList(start, end).forEach(id -> runs.add(id.text()));
            }
            start = end;
        }
        return runs;
    }
}
