package groupwright.definition.quality;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A line of {@code statements.txt}: a statement and what is to be found in it. */
record Example(Statement statement, Optional<EarsPattern> pattern, List<String> findings) {
    static List<Example> all() {
        try (InputStream stream = Example.class.getResourceAsStream("statements.txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(Example::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Example parse(String line) {
        String[] parts = line.split(" \\| ");
        return new Example(
                new Statement(parts[1], Measure.valueOf(parts[0])),
                Optional.of(parts[2]).filter(name -> !name.equals("-")).map(EarsPattern::valueOf),
                Stream.of(parts[3].split("; "))
                        .filter(name -> !name.equals("-"))
                        .sorted()
                        .toList());
    }

    /** The findings as they are written in the file. */
    static List<String> written(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.check().id() + " \"" + finding.words() + '"')
                .sorted()
                .toList();
    }

    @Override
    public String toString() {
        return statement.text();
    }
}
