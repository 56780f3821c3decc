package groupwright.documents.pages;

/**
 * Text in one face; every sign of it has a glyph there.
 *
 * @param width in points
 */
record Run(String text, Style style, double width) {}
