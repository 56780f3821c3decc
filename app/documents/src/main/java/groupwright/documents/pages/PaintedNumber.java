package groupwright.documents.pages;

import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Use;

/**
 * A live number on a page.
 *
 * @param use which place of which entry
 * @param entry where the number comes from
 * @param shown as it is printed here
 * @param area from above its digits to the line below them, the small raised number left out
 */
public record PaintedNumber(Use use, NumberedEntry entry, String shown, Area area) {}
