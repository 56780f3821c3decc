package groupwright.documents.pages;

import java.util.Optional;

/**
 * A heading.
 *
 * @param level from 1
 * @param title in plain text
 * @param page where it stands, from 0
 * @param y height on that page that comes to the upper edge, in points
 * @param line of the template it comes from, from 1; empty for the chapter every document ends with
 */
public record OutlineEntry(int level, String title, int page, double y, Optional<Integer> line) {}
