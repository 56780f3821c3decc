package groupwright.documents.template;

import java.util.Objects;

/**
 * A template as its author wrote it.
 *
 * @param name shown in problems, for example {@code specification.md}
 * @param text Markdown with <code>{{ … }}</code> placeholders and fenced blocks
 */
public record Template(String name, String text) {
    public Template {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(text, "text");
    }
}
