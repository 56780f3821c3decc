package groupwright.workbench.documents;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.UUID;

/**
 * A small file of texts by their keys in the program's own folder, one folder for each project. What cannot be read counts as
 * nothing: the project itself never lies in here.
 */
record KeptFile(Path path) {
    private static final long MOST_BYTES = 16 << 20;

    /**
     * The file of a project.
     *
     * @param folder of the program, for documents
     * @param project the project's folder; another place is another project
     */
    static KeptFile of(Path folder, Path project, String name) {
        String place = project.toAbsolutePath().normalize().toString();
        UUID key = UUID.nameUUIDFromBytes(place.getBytes(StandardCharsets.UTF_8));
        return new KeptFile(folder.resolve(key.toString()).resolve(name));
    }

    Map<String, String> read() {
        Map<String, String> texts = new TreeMap<>();
        try {
            if (Files.exists(path) && Files.size(path) <= MOST_BYTES) {
                Properties read = new Properties();
                read.load(new StringReader(Files.readString(path, StandardCharsets.UTF_8)));
                read.stringPropertyNames().forEach(key -> texts.put(key, read.getProperty(key)));
            }
        } catch (IOException | IllegalArgumentException damaged) { // no UTF-8, no such form: as if there were none
            texts.clear();
        }
        return texts;
    }

    /** Writes the whole file anew in one step; forced to disk first, so that a power cut leaves the one before. */
    void write(Map<String, String> texts) throws IOException {
        Properties write = new Properties();
        write.putAll(texts);
        StringWriter text = new StringWriter();
        write.store(text, null);
        AtomicText.replace(path, text.toString());
    }
}
