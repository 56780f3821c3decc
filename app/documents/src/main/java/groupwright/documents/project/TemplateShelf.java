package groupwright.documents.project;

import groupwright.documents.template.Template;
import groupwright.documents.template.Wording;
import groupwright.documents.template.WordingCatalogue;
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
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds the template of a document: the project's own, or else ours. */
final class TemplateShelf {
    static final List<String> NAMES =
            List.of("brief", "specification", "concepts", "cassette-study", "coverage", "fit", "claims");

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
        if (hasOwn(name)) {
            return own(name);
        } else if (!NAMES.contains(name)) {
            return Found.problem("templates/" + name + ".md: is not there any more; put it back or leave it out.");
        }
        String text =
                bundled(name).orElseThrow(() -> new IllegalArgumentException("there is no document called " + name));
        return new Found(Optional.of(new Template(name + ".md", text)), "");
    }

    /** What the blocks of templates say in a language: the project's own words first, then ours. */
    FoundWords words(Locale locale) {
        String name = "words." + locale.getLanguage();
        List<Template> files = new ArrayList<>();
        if (hasOwn(name)) {
            Found own = own(name);
            if (own.template().isEmpty()) {
                return new FoundWords(Wording.AS_WRITTEN, List.of(Obstacle.of(own.problem())));
            }
            files.add(own.template().get());
        }
        bundled(name).ifPresent(text -> files.add(new Template(name + ".md", text)));
        if (files.isEmpty()) {
            return new FoundWords(Wording.AS_WRITTEN, List.of());
        }
        List<WordingCatalogue> catalogues =
                files.stream().map(WordingCatalogue::read).toList();
        return new FoundWords(
                Wording.of(locale, "templates/" + name + ".md", catalogues),
                catalogues.stream()
                        .flatMap(catalogue -> catalogue.problems().stream())
                        .map(Obstacle::of)
                        .toList());
    }

    /** Words of a language, or what is wrong with their file. */
    record FoundWords(Wording wording, List<Obstacle> obstacles) {}

    private boolean hasOwn(String name) {
        return Files.exists(folder.resolve("templates").resolve(name + ".md"), LinkOption.NOFOLLOW_LINKS);
    }

    private Found own(String name) {
        Path own = folder.resolve("templates").resolve(name + ".md");
        String shown = "templates/" + name + ".md";
        try {
            Path root = folder.toRealPath();
            if (!own.toRealPath().equals(root.resolve("templates").resolve(name + ".md"))) {
                return Found.problem(shown + ": is a link or lies behind one; copy the file itself there.");
            } else if (Files.size(own) > MOST_BYTES) {
                return Found.problem(shown + ": has " + Files.size(own) + " bytes, at most " + MOST_BYTES
                        + " are read; shorten the file.");
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

    private static Optional<String> bundled(String name) {
        String resource = "/groupwright/templates/" + name + ".md";
        try (InputStream stream = TemplateShelf.class.getResourceAsStream(resource)) {
            return stream == null
                    ? Optional.empty()
                    : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException("the template " + resource + " cannot be read", broken);
        }
    }
}
