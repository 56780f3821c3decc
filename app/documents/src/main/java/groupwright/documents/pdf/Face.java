package groupwright.documents.pdf;

/** The faces that are embedded, each from its own font file. */
enum Face {
    REGULAR("/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf"),
    SEMIBOLD("/com/formdev/flatlaf/fonts/inter/Inter-SemiBold.otf"),
    ITALIC("/com/formdev/flatlaf/fonts/inter/Inter-Italic.otf"),
    SEMIBOLD_ITALIC("/com/formdev/flatlaf/fonts/inter/Inter-SemiBoldItalic.otf"),
    MONO("/com/formdev/flatlaf/fonts/jetbrains_mono/JetBrainsMono-Regular.ttf");

    private final String resource;

    Face(String resource) {
        this.resource = resource;
    }

    String resource() {
        return resource;
    }

    /** The face for text in this face that is to stand out. */
    Face strong() {
        return this == ITALIC || this == SEMIBOLD_ITALIC ? SEMIBOLD_ITALIC : this == MONO ? MONO : SEMIBOLD;
    }

    /** The face for emphasised text. */
    Face slanted() {
        return this == SEMIBOLD || this == SEMIBOLD_ITALIC ? SEMIBOLD_ITALIC : this == MONO ? MONO : ITALIC;
    }
}
