package groupwright.documents.pages;

import groupwright.documents.charts.InterFont;

/** The faces that are embedded, each from its own font file. */
enum Face {
    REGULAR(InterFont.REGULAR.resource()),
    SEMIBOLD(InterFont.SEMIBOLD.resource()),
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

    /** The face for a font of the charts. */
    static Face of(InterFont font) {
        return font == InterFont.SEMIBOLD ? SEMIBOLD : REGULAR;
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
