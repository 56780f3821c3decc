package groupwright.documents.pages;

/**
 * A link inside a document.
 *
 * @param area what is clicked
 * @param page where it leads, from 0
 * @param y height on that page that comes to the upper edge, in points
 */
public record PageLink(Area area, int page, double y) {}
