package groupwright.documents.pages;

import java.util.Optional;

/**
 * A heading on a page.
 *
 * @param level from 1
 * @param title in plain text
 * @param line of the template it comes from, from 1; empty for the chapter every document ends with
 * @param area the text column over the height of its lines
 */
public record PaintedHeading(int level, String title, Optional<Integer> line, Area area) {}
