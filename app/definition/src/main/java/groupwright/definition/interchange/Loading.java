package groupwright.definition.interchange;

import groupwright.definition.ledger.Circles;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Part;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/** Makes a definition of the files of a project; what cannot be read is a problem, and the rest opens. */
public final class Loading {
    /** The newest version of the file format this program understands. */
    public static final int FORMAT = 1;

    private Loading() {}

    /**
     * What the files gave.
     *
     * @param definition nothing where project.json could not be read
     * @param problems everything that is wrong, in the order of files
     * @param access read-only where the format is newer than this program
     */
    public record Outcome(Optional<Definition> definition, List<Problem> problems, Access access) {}

    /** Whether the project may be written. */
    public enum Access {
        WRITABLE,
        READ_ONLY
    }

    /**
     * Reads all files.
     *
     * @param files path inside the project, with /, to bytes
     */
    public static Outcome load(SortedMap<String, byte[]> files) {
        return load(files, Set.of());
    }

    /**
     * Reads all files.
     *
     * @param lost records whose files are there but could not even be handed over; whoever names them is sent there
     */
    public static Outcome load(SortedMap<String, byte[]> files, Set<RecordId> lost) {
        List<Problem> problems = new ArrayList<>();
        List<Entry> records = new ArrayList<>();
        Set<RecordId> unreadable = new HashSet<>(lost);
        Optional<Project> project = Optional.empty();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Optional<Target> target = target(file.getKey());
            if (target.isEmpty()) {
                continue; // storage has already said that the name is none of a record
            }
            RecordFile.Outcome outcome = RecordFile.read(
                    target.get().kind(), file.getKey(), target.get().id(), file.getValue());
            problems.addAll(outcome.problems());
            if (outcome.record().isEmpty()) {
                unreadable.add(target.get().id());
            } else if (outcome.record().get() instanceof Project found) {
                project = Optional.of(found);
            } else {
                records.add(outcome.record().get());
            }
        }
        if (project.isEmpty()) {
            return new Outcome(Optional.empty(), problems, Access.READ_ONLY);
        }
        Definition definition = Definition.of(project.get(), records);
        problems.addAll(consistency(definition, unreadable));
        return new Outcome(Optional.of(definition), problems, access(project.get(), problems));
    }

    /**
     * What is wrong between records that are each fine: references that lead nowhere, parts that are their own assemblies.
     * O(fields).
     *
     * @param unreadable records whose files are there but could not be read
     */
    public static List<Problem> consistency(Definition definition, Set<RecordId> unreadable) {
        List<Problem> problems = new ArrayList<>(ReferenceCheck.check(definition, unreadable));
        problems.addAll(circles(definition));
        return problems;
    }

    private static Access access(Project project, List<Problem> problems) {
        if (project.format() <= FORMAT) {
            return Access.WRITABLE;
        }
        problems.add(new Problem(
                "project.json",
                0,
                0,
                "project",
                "format",
                "is " + project.format() + ", newer than this program, which knows format " + FORMAT
                        + "; the project is open for reading only",
                "use a newer version of the program to change it"));
        return Access.READ_ONLY;
    }

    /** The record a path belongs to. */
    private record Target(RecordKind<?> kind, RecordId id) {}

    private static Optional<Target> target(String path) {
        int slash = path.lastIndexOf('/');
        String folder = slash < 0 ? "" : path.substring(0, slash);
        String name = path.substring(slash + 1);
        if (!name.endsWith(".json")) {
            return Optional.empty();
        }
        Optional<RecordId> id = RecordId.parse(name.substring(0, name.length() - ".json".length()));
        return RecordKinds.byFolder(folder)
                .flatMap(kind ->
                        id.filter(i -> i.letters().equals(kind.letters())).map(i -> new Target(kind, i)));
    }

    private static List<Problem> circles(Definition definition) {
        List<Problem> problems = new ArrayList<>();
        Set<String> circles = new TreeSet<>();
        Circles.find(definition, Part.PARENT).values().forEach(circle -> {
            List<String> way =
                    new ArrayList<>(circle.stream().map(RecordId::text).toList());
            way.add(way.get(0));
            circles.add(String.join(" → ", way));
        });
        for (String circle : circles) {
            String first = circle.substring(0, circle.indexOf(' '));
            problems.add(new Problem(
                    "parts/" + first + ".json",
                    0,
                    0,
                    first,
                    "parent",
                    "is its own assembly in the end: " + circle,
                    "change one of these parents"));
        }
        return problems;
    }
}
