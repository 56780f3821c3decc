package groupwright.documents.pages;

/**
 * How a heading is set.
 *
 * @param leading distance of its lines
 * @param before space above it
 */
record HeadingLook(Style style, double leading, double before) {
    static HeadingLook of(int level) {
        Style strong = Style.BODY.strong();
        return switch (level) {
            case 1 -> new HeadingLook(strong.ofSize(16.5), 22, 24);
            case 2 -> new HeadingLook(strong.ofSize(11.25), 15.5, 15);
            case 3 -> new HeadingLook(strong, 13.5, 11);
            default -> new HeadingLook(strong.in(Paper.MUTED), 13.5, 9);
        };
    }
}
