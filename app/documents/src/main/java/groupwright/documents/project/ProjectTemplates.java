package groupwright.documents.project;

import groupwright.documents.labels.Labels;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The templates of a project as texts: its own in the folder {@code templates}, and the program's.
 *
 * @param folder the project's folder
 */
public record ProjectTemplates(Path folder) {
    /** Whose a template is. */
    public enum Owner {
        PROGRAM,
        PROJECT
    }

    /**
     * A template as it is read now.
     *
     * @param text nothing where it cannot be read
     * @param problem why not, in one sentence; empty where it can
     */
    public record Found(Owner owner, Optional<String> text, String problem) {}

    /**
     * The names of the documents there are: the program's first, then the project's own in alphabetical order. Reads the
     * folder.
     *
     * @throws java.io.UncheckedIOException if the project's templates cannot be listed
     */
    public List<String> names() {
        return new TemplateShelf(folder).available();
    }

    /** Where the project's own template of a name lies, or would lie. */
    public Path file(String name) {
        return folder.resolve("templates").resolve(name + ".md");
    }

    /** Whether the program has a template of this name itself. */
    public static boolean isProgramsToo(String name) {
        return TemplateShelf.NAMES.contains(name);
    }

    /** The title of a document in the language of labels. */
    public static String title(String name, Labels labels) {
        return isProgramsToo(name) ? labels.text("document." + name) : TemplateShelf.title(name);
    }

    /** The template of a document, read now. */
    public Found find(String name) {
        Owner owner = Files.exists(file(name), LinkOption.NOFOLLOW_LINKS) || !isProgramsToo(name)
                ? Owner.PROJECT
                : Owner.PROGRAM;
        TemplateShelf.Found found = new TemplateShelf(folder).find(name);
        return new Found(owner, found.template().map(template -> template.text()), found.problem());
    }
}
