package groupwright.workbench.start;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;

/**
 * What a user chose about the window; an immutable value. A damaged file counts as none: nothing in it is work.
 *
 * @param dark whether the dark theme is shown
 * @param scalePct size of everything in percent, 100 to 200
 * @param language tag of the reader's language; empty means that of the system
 * @param project the project last worked on; empty at the first start
 * @param documents how documents are shown and written
 */
public record Preferences(Dark dark, int scalePct, String language, Optional<Path> project, DocumentChoices documents) {
    /** Whether the dark theme is shown. */
    public enum Dark {
        YES,
        NO
    }

    /** At the first start. */
    public static final Preferences USUAL = new Preferences(Dark.NO, 100, "", Optional.empty(), DocumentChoices.USUAL);

    public static final int LEAST_SCALE = 100;
    public static final int MOST_SCALE = 200;

    public Preferences {
        if (scalePct < LEAST_SCALE || scalePct > MOST_SCALE) {
            throw new IllegalArgumentException("the scale runs from 100 to 200 %, was " + scalePct);
        }
    }

    public Preferences with(Dark other) {
        return new Preferences(other, scalePct, language, project, documents);
    }

    public Preferences scaled(int pct) {
        return new Preferences(dark, pct, language, project, documents);
    }

    public Preferences of(Path other) {
        return new Preferences(dark, scalePct, language, Optional.of(other), documents);
    }

    public Preferences in(String tag) {
        return new Preferences(dark, scalePct, tag, project, documents);
    }

    public Preferences with(DocumentChoices other) {
        return new Preferences(dark, scalePct, language, project, other);
    }

    /** Reads them; {@link #USUAL} where there are none that can be read. */
    public static Preferences read(DataFolder folder) {
        Properties read = new Properties();
        try {
            read.load(new StringReader(Files.readString(folder.preferences(), StandardCharsets.UTF_8)));
            int scale = Integer.parseInt(read.getProperty("scale", "100"));
            String project = read.getProperty("project", "");
            return new Preferences(
                    Boolean.parseBoolean(read.getProperty("dark")) ? Dark.YES : Dark.NO,
                    Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale)),
                    read.getProperty("language", ""),
                    project.isEmpty() ? Optional.empty() : Optional.of(Path.of(project)),
                    DocumentChoices.of(read));
        } catch (IOException | IllegalArgumentException none) { // includes what is no number and no path
            return USUAL;
        }
    }

    /**
     * Keeps them.
     *
     * @throws IOException if they cannot be written
     */
    public void write(DataFolder folder) throws IOException {
        Properties write = new Properties();
        write.setProperty("dark", Boolean.toString(dark == Dark.YES));
        write.setProperty("scale", Integer.toString(scalePct));
        write.setProperty("language", language);
        project.ifPresent(path -> write.setProperty("project", path.toString()));
        documents.into(write);
        StringWriter text = new StringWriter();
        write.store(text, null);
        Files.createDirectories(folder.path());
        Path half = Files.createTempFile(folder.path(), ".preferences-", "");
        Files.writeString(half, text.toString(), StandardCharsets.UTF_8);
        Files.move(half, folder.preferences(), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
