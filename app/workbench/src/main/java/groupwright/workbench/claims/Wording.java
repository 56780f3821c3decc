package groupwright.workbench.claims;

import groupwright.definition.figure.Ask;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A wording with its live numbers filled in.
 *
 * @param parts in order
 * @param wrong why it could not be read or filled in, one sentence each
 */
record Wording(List<Part> parts, List<String> wrong) {
    /** A stretch of a wording. */
    sealed interface Part {
        String text();
    }

    /** Words as they stand. */
    record Said(String text) implements Part {}

    /** A number as of today. */
    record Number(Ask ask, ShownValue value) implements Part {
        @Override
        public String text() {
            return value.text();
        }
    }

    Wording {
        parts = List.copyOf(parts);
        wrong = List.copyOf(wrong);
    }

    /** In one piece. */
    String text() {
        return parts.stream().map(Part::text).collect(Collectors.joining());
    }

    /** In quotation marks. */
    String quoted() {
        return "“" + text() + "”";
    }

    List<Number> numbers() {
        return parts.stream()
                .filter(Number.class::isInstance)
                .map(Number.class::cast)
                .toList();
    }
}
