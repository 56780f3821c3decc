package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Names in a project that do not belong where they are. Names that start with a point are none of our business. */
final class NameCheck {
    private final Listing listing;
    private final Set<String> recordFolders;
    private final List<Problem> problems = new ArrayList<>();

    private NameCheck(Listing listing, Set<String> recordFolders) {
        this.listing = listing;
        this.recordFolders = recordFolders;
    }

    static List<Problem> problems(Listing listing, Set<String> recordFolders) {
        NameCheck check = new NameCheck(listing, recordFolders);
        check.checkTop();
        new TreeSet<>(recordFolders).forEach(check::checkFolder);
        return check.problems;
    }

    /** Other files and folders are welcome in the project folder, but not one that is nearly ours. */
    private void checkTop() {
        for (String name : listing.top()) {
            String lower = name.toLowerCase(Locale.ROOT);
            boolean nearlyOurs = recordFolders.contains(lower) || lower.equals(RecordPath.PROJECT.text());
            if (nearlyOurs && !lower.equals(name)) {
                add(name, "is not read because of its capital letters", "rename it to " + lower);
            }
        }
    }

    private void checkFolder(String folder) {
        List<String> names = listing.names(folder).stream()
                .filter(name -> !name.startsWith("."))
                .toList();
        for (String name : names) {
            if (RecordPath.parse(folder + "/" + name).isEmpty()) {
                add(folder + "/" + name, "is no record", "name it like R-001.json or move it away");
            }
        }
        checkCase(folder, names);
    }

    /** On systems that do not tell capitals apart one of the two would be lost. */
    private void checkCase(String folder, Collection<String> names) {
        Map<String, String> seen = new TreeMap<>();
        for (String name : names) {
            String first = seen.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
            if (first != null) {
                add(folder + "/" + name, "differs from " + first + " only by capital letters", "rename one of them");
            }
        }
    }

    private void add(String file, String wrong, String remedy) {
        problems.add(Problem.ofFile(file, wrong, remedy));
    }
}
