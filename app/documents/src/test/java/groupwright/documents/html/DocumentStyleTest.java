package groupwright.documents.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.Palette;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The style's colours: those of paper in the light, readable in both themes. */
class DocumentStyleTest {
    private static final String STYLE = Enclosed.read("document.css").text();

    /** The two themes in their order; dark takes over what it does not say. */
    private static List<Map<String, Color>> themes() {
        List<Map<String, Color>> themes = new ArrayList<>();
        Matcher roots = Pattern.compile(":root \\{(.*?)\\}", Pattern.DOTALL).matcher(STYLE);
        while (roots.find()) {
            Map<String, Color> theme = new TreeMap<>(themes.isEmpty() ? Map.of() : themes.get(0));
            Matcher colours = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{6});").matcher(roots.group(1));
            while (colours.find()) {
                theme.put(colours.group(1), Color.decode(colours.group(2)));
            }
            themes.add(theme);
        }
        return themes;
    }

    @Test
    void lightColoursAreThoseOfPaper() {
        Hue.all().forEach((colour, name) -> assertEquals(colour, themes().get(0).get(name), name));
        assertEquals(Palette.PAPER.ink(), themes().get(0).get("ink"));
    }

    @Test
    void everyColourOfAChartHasItsRules() {
        for (String name : Hue.all().values()) {
            assertTrue(STYLE.contains(".fill-" + name + " { fill: var(--" + name + "); }"), name);
            assertTrue(STYLE.contains(".line-" + name + " { fill: none; stroke: var(--" + name + "); }"), name);
        }
    }

    /** WCAG 2.1, 1.4.3 and 1.4.11: text 4.5 to 1, marks and edges of controls 3 to 1. */
    @Test
    void textAndMarksCanBeReadInBothThemes() {
        assertEquals(2, themes().size());
        for (Map<String, Color> theme : themes()) {
            for (String text : List.of("ink", "muted", "accent")) {
                assertContrast(4.5, theme, text, "paper");
            }
            assertContrast(4.5, theme, "ink", "wash");
            for (String mark :
                    List.of("edge", "meets", "misses", "close", "missing", "concept-1", "concept-2", "concept-3")) {
                assertContrast(3, theme, mark, "paper");
            }
        }
    }

    private static void assertContrast(double least, Map<String, Color> theme, String front, String back) {
        double one = luminance(theme.get(front));
        double other = luminance(theme.get(back));
        double contrast = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
        assertTrue(contrast >= least, front + " on " + back + ": " + contrast);
    }

    /** WCAG 2.1, relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
