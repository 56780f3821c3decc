package groupwright.documents.project;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a document can be written as. */
public enum Format {
    MARKDOWN(".md"),
    HTML(".html"),
    PDF(".pdf");

    private final String ending;

    Format(String ending) {
        this.ending = ending;
    }

    /** Names of all formats as they are typed, in their order. */
    public static List<String> names() {
        return Arrays.stream(values()).map(Format::typed).toList();
    }

    /** The format of a name; nothing where there is no such format. */
    public static Optional<Format> named(String name) {
        return Arrays.stream(values())
                .filter(format -> format.typed().equals(name))
                .findFirst();
    }

    private String typed() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How its files end. */
    String ending() {
        return ending;
    }
}
