package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Edits that write their number into five files and make or remove a sixth; run as a process of its own, until killed. */
final class NumberedEdits {
    private static final List<String> STAMPED = List.of(
            "project.json",
            "needs/N-001.json",
            "needs/N-002.json",
            "requirements/R-001.json",
            "requirements/R-002.json");

    private static final String ONLY_AT_ODD_NUMBERS = "concepts/C-001.json";

    private NumberedEdits() {}

    /** The whole project after an edit. */
    static SortedMap<String, String> state(int number) {
        SortedMap<String, String> state = new TreeMap<>();
        STAMPED.forEach(path -> state.put(path, stamped(path, number)));
        if (number % 2 == 1) {
            state.put(ONLY_AT_ODD_NUMBERS, stamped(ONLY_AT_ODD_NUMBERS, number));
        }
        return state;
    }

    /** Long and short texts by turns, so that a file cut off or mixed is noticed. */
    private static String stamped(String path, int number) {
        return "{\"edit\": " + number + ", \"path\": \"" + path + "\", \"fill\": \""
                + String.valueOf(number % 10).repeat(1 + (number * 7919) % 20_000) + "\"}\n";
    }

    /** The number of the edit that the project shows. */
    static int number(SortedMap<String, String> texts) {
        String text = texts.getOrDefault("project.json", "{\"edit\": -1,");
        return Integer.parseInt(text.substring("{\"edit\": ".length(), text.indexOf(',')));
    }

    public static void main(String[] arguments) throws IOException {
        Opening opening =
                ProjectFolder.at(Path.of(arguments[0]), Project.FOLDERS).openForWriting();
        try (ProjectWriter writer = ((Opening.Opened) opening).writer()) {
            for (int next = number(Project.texts(writer.read())) + 1; ; next++) {
                Outcome outcome = writer.commit(changes(state(next - 1), state(next)));
                if (!outcome.sentence().equals("Saved.")) {
                    throw new IllegalStateException(outcome.sentence());
                }
                System.out.println(next);
            }
        }
    }

    private static List<Change> changes(SortedMap<String, String> before, SortedMap<String, String> after) {
        SortedMap<String, String> all = new TreeMap<>(before);
        all.putAll(after);
        List<Change> changes = new ArrayList<>();
        all.keySet()
                .forEach(path -> changes.add(new Change(
                        Project.path(path),
                        Optional.ofNullable(before.get(path))
                                .map(text -> Content.ofText(text).sha256()),
                        Optional.ofNullable(after.get(path)).map(Content::ofText))));
        return changes;
    }
}
