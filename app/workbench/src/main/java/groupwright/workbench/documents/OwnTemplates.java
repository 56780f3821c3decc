package groupwright.workbench.documents;

import groupwright.documents.project.ProjectTemplates;
import groupwright.documents.project.ProjectTemplates.Owner;
import groupwright.workbench.look.Words;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** Changes the templates of a project on disk. Nothing is ever deleted, and nothing overwritten that was not read before. */
record OwnTemplates(ProjectTemplates templates, Words words) {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    private static final int MOST_BACKUPS = 1000;

    /** What came of a change. */
    sealed interface Outcome {
        /** It is done. */
        record Done(Path file) implements Outcome {}

        /** The file is no longer what the text was begun on. */
        record ChangedMeanwhile() implements Outcome {}

        /** It was refused. */
        record Refused(String sentence) implements Outcome {}
    }

    private interface Change {
        Outcome make(Path file) throws IOException;
    }

    /** Why a name cannot be that of a new template; nothing if it can. */
    Optional<String> wrongName(String name) {
        return NAME.matcher(name).matches() ? Optional.empty() : Optional.of(words.text("name.wrong", name));
    }

    /** Copies the program's template into the project, where it can be changed. */
    Outcome copy(String name) {
        ProjectTemplates.Found found = templates.find(name);
        return found.owner() == Owner.PROJECT
                ? new Outcome.Refused(words.text("copy.taken", file(name)))
                : create(name, found.text().orElse(""));
    }

    /** Starts a template from a skeleton. */
    Outcome add(String name) {
        Optional<String> wrong = wrongName(name);
        return wrong.isPresent()
                ? new Outcome.Refused(wrong.get())
                : templates.names().contains(name)
                        ? new Outcome.Refused(words.text("name.taken", name))
                        : create(name, words.text("skeleton"));
    }

    private Outcome create(String name, String text) {
        return change(name, file -> {
            try {
                AtomicText.create(file, text);
                return new Outcome.Done(file);
            } catch (FileAlreadyExistsException taken) {
                return new Outcome.Refused(words.text("copy.taken", file(name)));
            }
        });
    }

    /**
     * Saves a text.
     *
     * @param expected what the file holds as far as one knows; if it holds anything else it stays as it is
     */
    Outcome save(String name, Optional<String> expected, String text) {
        return change(name, file -> {
            ProjectTemplates.Found now = templates.find(name);
            if (now.text().isEmpty() && now.owner() == Owner.PROJECT && Files.exists(file)) {
                return new Outcome.Refused(now.problem());
            }
            Optional<String> held = now.owner() == Owner.PROJECT ? now.text() : Optional.empty();
            if (!held.equals(expected)) {
                return new Outcome.ChangedMeanwhile();
            }
            AtomicText.replace(file, text);
            return new Outcome.Done(file);
        });
    }

    /** Gives the project's template another name that is no template's, so that the program's own counts again. */
    Outcome putAway(String name) {
        return change(name, file -> {
            for (int i = 0; i < MOST_BACKUPS; i++) {
                Path away = file.resolveSibling(name + ".md.bak" + (i == 0 ? "" : "-" + i));
                if (!Files.exists(away, LinkOption.NOFOLLOW_LINKS)) {
                    Files.move(file, away);
                    return new Outcome.Done(away);
                }
            }
            return new Outcome.Refused(words.text("back.full", file(name)));
        });
    }

    /** Links inside a project are never followed. */
    private Outcome change(String name, Change change) {
        Path file = templates.file(name);
        try {
            if (Files.isSymbolicLink(file) || Files.isSymbolicLink(file.getParent())) {
                return new Outcome.Refused(words.text("template.link", file(name)));
            }
            return change.make(file);
        } catch (IOException trouble) {
            return new Outcome.Refused(words.text("template.trouble", file(name), reason(trouble)));
        }
    }

    private static String file(String name) {
        return "templates/" + name + ".md";
    }

    private static String reason(IOException trouble) {
        return trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
    }
}
