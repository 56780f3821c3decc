package groupwright.definition.figures;

import groupwright.definition.figure.Figure;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/**
 * Names of figures, and what they leave out, in a reader's language; another language is another file beside this class.
 * Formulas and sources stay as they are published. Each answer is one look-up in a table.
 */
public final class FigureNames {
    private static final String LEAVES_OUT = ".leavesOut";
    private static final ResourceBundle.Control ASKED_LANGUAGE_OR_ENGLISH =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle words;

    private FigureNames(ResourceBundle words) {
        this.words = words;
    }

    /** The names in one language; English where it has none, whatever the machine speaks. */
    public static FigureNames in(Locale locale) {
        Objects.requireNonNull(locale, "locale");
        return new FigureNames(
                ResourceBundle.getBundle("groupwright.definition.figures.names", locale, ASKED_LANGUAGE_OR_ENGLISH));
    }

    /** A figure as people say it; a figure that the language does not know keeps its own name. */
    public String of(Figure figure) {
        return words.containsKey(figure.id()) ? words.getString(figure.id()) : figure.name();
    }

    /** What a figure neglects; in the figure's own words where the language has none. */
    public String leavesOut(Figure figure) {
        String key = figure.id() + LEAVES_OUT;
        return words.containsKey(key) ? words.getString(key) : figure.leavesOut();
    }
}
