package groupwright.workbench.look;

import java.awt.Color;
import javax.swing.UIManager;

/** The colours by what they are for. */
public enum Token {
    /** Rail, bars, heads of tables. */
    GROUND("ground"),
    /** The place in the middle. */
    SURFACE("surface"),
    /** Tables, fields, Workings. */
    RAISED("raised"),
    /** Text, and the upright of targets. */
    INK("ink"),
    /** Units, captions, ids. */
    MUTED("muted"),
    /** Edges of fields, axes, the dimension line at rest. */
    EDGE("edge"),
    /** Rules between rows; never the only sign of anything. */
    HAIRLINE("hairline"),
    /** Selection, focus, links, main button. */
    ACCENT("accent"),
    /** A main button under the pointer. */
    ACCENT_OVER("accentOver"),
    /** Text on a main button. */
    ON_ACCENT("onAccent"),
    /** Behind a selected row or figure, always with an accent line. */
    WASH("wash"),
    /** Behind a selection in a list that has not the focus. */
    IDLE_SELECTION("idleSelection"),
    MEETS("meets"),
    MISSES("misses"),
    /** Too close to call, and every band. */
    CLOSE("close"),
    /** A missing input. */
    MISSING("missing"),
    /** The patch behind what the last step changed. */
    CHANGED("changed"),
    /** Text on that patch. */
    CHANGED_INK("changedInk"),
    CONCEPT_1("concept1"),
    CONCEPT_2("concept2"),
    CONCEPT_3("concept3"),
    CONCEPT_4("concept4");

    private final String key;

    Token(String name) {
        this.key = "Gw." + name;
    }

    String key() {
        return key;
    }

    /**
     * The colour in the theme that is set; ask again after the theme has changed.
     *
     * @throws IllegalStateException if no look has been set up
     */
    public Color colour() {
        Color colour = UIManager.getColor(key);
        if (colour == null) {
            throw new IllegalStateException("no colour " + key + "; call Look.setUp first");
        }
        return colour;
    }
}
