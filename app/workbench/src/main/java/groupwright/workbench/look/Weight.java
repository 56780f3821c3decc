package groupwright.workbench.look;

import groupwright.documents.charts.InterFont;

/** The two weights of text. */
public enum Weight {
    REGULAR(InterFont.REGULAR, "defaultFont"),
    /** Titles, the selected row, values of the lead concept, totals, actions. */
    STRONG(InterFont.SEMIBOLD, "semibold.font");

    private final InterFont face;
    private final String key;

    Weight(InterFont face, String key) {
        this.face = face;
        this.key = key;
    }

    InterFont face() {
        return face;
    }

    String key() {
        return key;
    }
}
