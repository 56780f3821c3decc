package groupwright.documents.template;

/**
 * How much a template may be.
 *
 * @param bytes of the template in UTF-8
 * @param blocks paragraphs, headings, list items, table rows and the like in the finished document
 * @param depth levels of nesting: lists in quotes in lists, emphasis in emphasis
 * @param loops levels of repeated sections
 * @param bodies levels of blocks in blocks, conditions and repeated sections together
 */
record Limits(int bytes, int blocks, int depth, int loops, int bodies) {
    static final Limits STANDARD = new Limits(1024 * 1024, 100_000, 40, 3, 12);
}
