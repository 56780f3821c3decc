package groupwright.documents.html;

import groupwright.documents.charts.Palette;
import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Map;

/** Colours by their part, so that the style can give them others on a dark screen. */
final class Hue {
    private static final Map<Color, String> NAMES = names();

    private Hue() {}

    private static Map<Color, String> names() {
        Palette paper = Palette.PAPER;
        Map<Color, String> names = new LinkedHashMap<>();
        names.put(paper.surface(), "paper");
        names.put(paper.ink(), "ink");
        names.put(paper.muted(), "muted");
        names.put(paper.edge(), "edge");
        names.put(paper.hairline(), "hairline");
        names.put(paper.accent(), "accent");
        names.put(paper.meets(), "meets");
        names.put(paper.misses(), "misses");
        names.put(paper.close(), "close");
        names.put(paper.missing(), "missing");
        for (int i = 0; i < paper.concepts().size(); i++) {
            names.putIfAbsent(paper.concepts().get(i), "concept-" + (i + 1)); // the last hue is the ink
        }
        return Map.copyOf(names);
    }

    /**
     * The part a colour of {@link Palette#PAPER} plays.
     *
     * @throws IllegalArgumentException for another colour, which would not follow the theme
     */
    static String of(Color colour) {
        String name = NAMES.get(colour);
        if (name == null) {
            throw new IllegalArgumentException("charts are painted in colours of their palette, not in " + colour);
        }
        return name;
    }

    /** All parts with their colours on paper. */
    static Map<Color, String> all() {
        return NAMES;
    }
}
