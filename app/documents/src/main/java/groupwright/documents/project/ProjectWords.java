package groupwright.documents.project;

import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Project;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Words about the project and its lead concept that templates can show and ask for. */
final class ProjectWords {
    private final Sheet sheet;
    private final SortedMap<String, Function<Project, String>> words = new TreeMap<>();

    ProjectWords(Sheet sheet) {
        this.sheet = sheet;
        words.put("project.name", Project::name);
        words.put("project.company", Project::company);
        words.put("project.purpose", Project::purpose);
        words.put("project.currency", Project::currency);
        words.put("lead.id", any -> lead().map(c -> c.id().text()).orElse(""));
        words.put("lead.title", any -> lead().map(Concept::title).orElse(""));
        words.put("lead.description", any -> lead().map(Concept::description).orElse(""));
    }

    private Optional<Concept> lead() {
        return sheet.assessment().lead().flatMap(id -> sheet.definition().get(id, Concept.class));
    }

    boolean contains(String word) {
        return words.containsKey(word);
    }

    /** What a word stands for; empty where the project says nothing. */
    String value(String word) {
        return words.get(word).apply(sheet.definition().project());
    }

    SortedSet<String> all() {
        return new TreeSet<>(words.keySet());
    }

    /** The sentence about a name that is neither such a word nor a field. */
    Invalid unknown(String name, String expected) {
        SortedSet<String> known = all();
        for (String kind : Kinds.words()) {
            RecordFields.of(Kinds.of(kind)).keySet().forEach(field -> known.add(kind + "." + field));
        }
        return new Invalid(
                "",
                "\"" + name + "\" is neither a field nor a word of the project",
                Nearest.of(name, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(expected));
    }
}
