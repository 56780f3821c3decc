package groupwright.documents.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The files of fixed words say the same in every language, and say nothing that no document needs. */
class LabelFilesTest {
    private static final Pattern PART = Pattern.compile("\\{(\\d+)}");
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z-]*\\.[A-Za-z.-]*)\"");

    private static Properties file(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = new InputStreamReader(
                Labels.class.getResourceAsStream("/groupwright/documents/" + name), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }

    private static Set<String> keys(Properties file) {
        return new TreeSet<>(file.stringPropertyNames());
    }

    private static Set<String> parts(String text) {
        return PART.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void germanHasTheSameKeysAndParts() throws IOException {
        Properties english = file("labels.properties");
        Properties german = file("labels_de.properties");
        assertEquals(List.copyOf(keys(english)), List.copyOf(keys(german)));
        for (String key : keys(english)) {
            assertEquals(parts(english.getProperty(key)), parts(german.getProperty(key)), key);
        }
    }

    @Test
    void everyTextIsAPatternThatPrintsAllItsParts() throws IOException {
        Object[] parts = IntStream.range(0, 10).mapToObj(i -> "part" + i).toArray();
        for (String name : List.of("labels.properties", "labels_de.properties")) {
            Properties file = file(name);
            for (String key : keys(file)) {
                String pattern = file.getProperty(key);
                String printed = new MessageFormat(pattern, Locale.GERMAN).format(parts);
                for (String part : parts(pattern)) {
                    assertTrue(printed.contains("part" + part.charAt(1)), name + ", " + key + ": " + printed);
                }
                assertEquals(
                        pattern.replaceAll("[^']", "").length() / 2,
                        printed.replaceAll("[^']", "").length(),
                        name + ", " + key + ": an apostrophe is not doubled");
            }
        }
    }

    /** A key is used if the program has it as a literal, or a literal that ends with a point and begins it. */
    @Test
    void noKeyIsUnused() throws IOException {
        Set<String> literals = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
            for (Path source :
                    sources.filter(path -> path.toString().endsWith(".java")).toList()) {
                LITERAL.matcher(Files.readString(source)).results().forEach(found -> literals.add(found.group(1)));
            }
        }
        List<String> unused = keys(file("labels.properties")).stream()
                .filter(key -> literals.stream()
                        .noneMatch(literal -> literal.equals(key) || literal.endsWith(".") && key.startsWith(literal)))
                .toList();
        assertEquals(List.of(), unused);
    }
}
