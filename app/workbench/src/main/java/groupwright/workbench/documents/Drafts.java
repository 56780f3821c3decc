package groupwright.workbench.documents;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Texts of templates that are typed but not saved. They are written to the program's own folder while one types, so that
 * neither another document, another theme, a closed window nor a power cut loses them: at the next start they stand in the
 * editor again, still unsaved.
 *
 * @param all by the names of the templates
 */
record Drafts(Map<String, Draft> all) {
    static final Drafts NONE = new Drafts(Map.of());
    private static final String FILE = "drafts.properties";
    private static final String BASE = "base.";
    private static final String TEXT = "text.";

    /**
     * One text.
     *
     * @param base what the file held when the text was begun
     * @param text as it is now
     */
    record Draft(String base, String text) {}

    Drafts {
        all = Map.copyOf(all);
    }

    Optional<Draft> of(String name) {
        return Optional.ofNullable(all.get(name));
    }

    Drafts with(String name, Draft draft) {
        Map<String, Draft> more = new TreeMap<>(all);
        more.put(name, draft);
        return new Drafts(more);
    }

    Drafts without(String name) {
        Map<String, Draft> fewer = new TreeMap<>(all);
        fewer.remove(name);
        return new Drafts(fewer);
    }

    static Drafts read(Path folder, Path project) {
        Map<String, String> texts = KeptFile.of(folder, project, FILE).read();
        Map<String, Draft> drafts = new TreeMap<>();
        texts.forEach((key, text) -> {
            if (key.startsWith(TEXT)) {
                String name = key.substring(TEXT.length());
                drafts.put(name, new Draft(texts.getOrDefault(BASE + name, ""), text));
            }
        });
        return new Drafts(drafts);
    }

    void write(Path folder, Path project) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        all.forEach((name, draft) -> {
            texts.put(BASE + name, draft.base());
            texts.put(TEXT + name, draft.text());
        });
        KeptFile.of(folder, project, FILE).write(texts);
    }
}
