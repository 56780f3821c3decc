package groupwright.definition.figures;

import groupwright.definition.figure.Figure;
import java.util.Locale;
import java.util.ResourceBundle;

/** Names of figures as people say them, by id; see {@link FigureNames} for other languages. */
final class Names {
    private static final ResourceBundle NAMES =
            ResourceBundle.getBundle("groupwright.definition.figures.names", Locale.ROOT);

    private Names() {}

    /** Starts the description of a figure under its name. */
    static Figure.Builder figure(String id) {
        return Figure.named(id, NAMES.getString(id));
    }
}
