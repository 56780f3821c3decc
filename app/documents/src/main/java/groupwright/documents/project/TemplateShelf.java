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
import java.util.List;
import java.util.Optional;

/** Finds the template of a document: the project's own, or else ours. */
final class TemplateShelf {
    static final List<String> NAMES = List.of("brief", "specification", "concepts", "coverage", "claims");

    private static final long MOST_BYTES = 1 << 20;

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

    Found find(String name) {
        Path own = folder.resolve("templates").resolve(name + ".md");
        if (!Files.exists(own, LinkOption.NOFOLLOW_LINKS)) {
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
