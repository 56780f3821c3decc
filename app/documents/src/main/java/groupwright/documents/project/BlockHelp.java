package groupwright.documents.project;

/**
 * What the reference of templates says about a block.
 *
 * @param arguments what stands behind its name, in words; empty where nothing does
 * @param says what it shows, one line
 * @param example a whole block as it stands in a template
 */
record BlockHelp(String arguments, String says, String example) {
    BlockHelp {
        if (says.isBlank() || !example.startsWith("```")) {
            throw new IllegalArgumentException("a block needs a line of help and an example, had \"" + says + "\"");
        }
    }
}
