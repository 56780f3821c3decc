package groupwright.documents.project;

import groupwright.documents.template.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds the template of a document: the project's own, or else ours. */
final class TemplateShelf {
    static final List<String> NAMES = List.of("brief", "specification", "concepts", "coverage", "claims");

    private static final long MOST_BYTES = 1 << 20;

    /** File names of templates that become documents of their own. */
    private static final Pattern FILE = Pattern.compile("([a-z][a-z0-9-]{0,39})\\.md");

    private final Path folder;

    TemplateShelf(Path folder) {
        this.folder = folder;
    }

    /** A template, or why there is none in one sentence. */
    record Found(Optional<Template> template, String problem) {
        static Found problem(String sentence) {
            return new Found(Optional.empty(), sentence);
        }
    }

    /**
     * The documents there are: ours first, then those of the project's own templates in alphabetical order.
     *
     * @throws UncheckedIOException if the project's templates cannot be listed
     */
    List<String> available() {
        List<String> names = new ArrayList<>(NAMES);
        Path templates = folder.resolve("templates");
        if (!Files.isDirectory(templates, LinkOption.NOFOLLOW_LINKS)) {
            return names; // a link in its place is named when a template is read
        }
        try (Stream<Path> files = Files.list(templates)) {
            files.map(file -> FILE.matcher(file.getFileName().toString()))
                    .filter(Matcher::matches)
                    .map(file -> file.group(1))
                    .filter(name -> !NAMES.contains(name))
                    .sorted()
                    .forEach(names::add);
            return List.copyOf(names);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the folder " + templates + " cannot be read", unreadable);
        }
    }

    /** The title of a template that is not ours: its name in sentence case. */
    static String title(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1).replace('-', ' ');
    }

    Found find(String name) {
        Path own = folder.resolve("templates").resolve(name + ".md");
        if (!Files.exists(own, LinkOption.NOFOLLOW_LINKS)) {
            if (!NAMES.contains(name)) {
                return Found.problem("templates/" + name + ".md: is not there any more; put it back or leave it out.");
            }
            return new Found(Optional.of(new Template(name + ".md", bundled(name))), "");
        }
        String shown = "templates/" + name + ".md";
        try {
            Path root = folder.toRealPath();
            if (!own.toRealPath().equals(root.resolve("templates").resolve(name + ".md"))) {
                return Found.problem(shown + ": is a link or lies behind one; copy the template itself there.");
            } else if (Files.size(own) > MOST_BYTES) {
                return Found.problem(shown + ": has " + Files.size(own) + " bytes, at most " + MOST_BYTES
                        + " are read; shorten the template.");
            }
            return new Found(Optional.of(new Template(shown, decoded(Files.readAllBytes(own)))), "");
        } catch (CharacterCodingException wrong) {
            return Found.problem(shown + ": is not UTF-8; save it as UTF-8.");
        } catch (IOException unreadable) {
            return Found.problem(
                    shown + ": cannot be read (" + unreadable.getMessage() + "); look at its access rights.");
        }
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    private static String bundled(String name) {
        String resource = "/groupwright/templates/" + name + ".md";
        try (InputStream stream = TemplateShelf.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalArgumentException("there is no document called " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the template " + resource + " cannot be read", broken);
        }
    }
}
