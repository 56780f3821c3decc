package groupwright.definition.storage;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a file of the project lies: {@code project.json}, or {@code FOLDER/ID.json}. Checked by pattern, so that no text
 * from outside can name a place elsewhere on the disk.
 *
 * @param text the path below the project folder, with {@code /}
 */
public record RecordPath(String text) implements Comparable<RecordPath> {
    private static final Pattern FOLDER = Pattern.compile("[a-z]{1,40}(?:-[a-z]{1,40}){0,3}");
    private static final Pattern ID = Pattern.compile("[A-Z]{1,3}-[0-9]{3,6}");
    private static final Pattern FORM =
            Pattern.compile("project\\.json|(?<folder>" + FOLDER + ")/(?<id>" + ID + ")\\.json");

    /** The file that makes a folder a project. */
    public static final RecordPath PROJECT = new RecordPath("project.json");

    public RecordPath {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("a record lies in FOLDER/ID.json, was " + text);
        }
    }

    /**
     * The place of a record.
     *
     * @throws IllegalArgumentException if the folder or the id is not of the required form
     */
    public static RecordPath of(String folder, String id) {
        return new RecordPath(folder + "/" + id + ".json");
    }

    /** The place, or nothing if the text is not of the required form. */
    public static Optional<RecordPath> parse(String text) {
        return FORM.matcher(text).matches() ? Optional.of(new RecordPath(text)) : Optional.empty();
    }

    static boolean isFolderName(String name) {
        return FOLDER.matcher(name).matches();
    }

    /** The folder below the project folder, empty for {@code project.json}. */
    public String folder() {
        return part("folder");
    }

    /** The id of the record, empty for {@code project.json}. */
    public String id() {
        return part("id");
    }

    private String part(String group) {
        Matcher matcher = FORM.matcher(text);
        return matcher.matches() && matcher.group(group) != null ? matcher.group(group) : "";
    }

    Path below(Path root) {
        return root.resolve(text);
    }

    /** The name of the new version in an edit folder; one for each path, as folders are lower-case and ids upper. */
    String stagedName() {
        return text.replace('/', '-');
    }

    @Override
    public int compareTo(RecordPath other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
