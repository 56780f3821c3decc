package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A file of words: comment lines with {@code #}, then texts as {@code key = text}, then sections such as
 * {@code [words]} with lines {@code phrase ; source ; advice}. In {@code [words]} the source is required.
 *
 * @param name the file, for messages
 * @param texts the texts by key
 * @param sections the lines by section
 */
record WordList(String name, Map<String, Template> texts, Map<String, List<Entry>> sections) {
    private static final Set<String> SOURCES = Set.of("iso", "incose", "memory", "ears", "ours");

    WordList {
        texts = Map.copyOf(texts);
        sections = Map.copyOf(sections);
    }

    /**
     * Reads the lines of a file.
     *
     * @throws IllegalArgumentException if a line is no comment, text, section or entry, naming file and line
     */
    static WordList parse(String name, List<String> lines) {
        Map<String, Template> texts = new LinkedHashMap<>();
        Map<String, List<Entry>> sections = new LinkedHashMap<>();
        Optional<String> section = Optional.empty();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            String where = name + ":" + (i + 1);
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            if (line.startsWith("[") && line.endsWith("]")) {
                section = Optional.of(line.substring(1, line.length() - 1));
                sections.put(section.get(), new ArrayList<>());
            } else if (section.isPresent()) {
                sections.get(section.get()).add(entry(where, section.get(), line));
            } else {
                addText(where, line, texts);
            }
        }
        sections.replaceAll((key, entries) -> List.copyOf(entries));
        return new WordList(name, texts, sections);
    }

    private static void addText(String where, String line, Map<String, Template> texts) {
        int equals = line.indexOf(" = ");
        if (equals < 0) {
            throw new IllegalArgumentException(where + ": \"" + line + "\" stands before the first section; write key ="
                    + " text, or begin the line with #");
        }
        texts.put(line.substring(0, equals), new Template(line.substring(equals + 3)));
    }

    private static Entry entry(String where, String section, String line) {
        String[] parts = line.split(" ; ", 3);
        String source = parts.length > 1 ? parts[1].strip() : "";
        if (section.equals("words") && !SOURCES.contains(source)) {
            throw new IllegalArgumentException(where + ": \"" + line + "\" names no known source; add one of "
                    + SOURCES.stream().sorted().toList());
        }
        return new Entry(parts[0].strip(), source, parts.length > 2 ? parts[2].strip() : "");
    }

    /** The text of a key. */
    Template text(String key) {
        return Optional.ofNullable(texts.get(key))
                .orElseThrow(() -> new IllegalArgumentException(name + " has no text \"" + key + "\"; add one"));
    }

    /** The lines of a section, none if there is no such section. */
    List<Entry> section(String key) {
        return sections.getOrDefault(key, List.of());
    }

    /** The phrases of a section as a set, for lists of single words. */
    Set<String> set(String key) {
        return section(key).stream().map(Entry::phrase).collect(Collectors.toUnmodifiableSet());
    }

    /** The phrases to find: section {@code [words]} without those of {@code [except]}. */
    Phrases phrases() {
        return new Phrases(section("words"), section("except"));
    }
}
