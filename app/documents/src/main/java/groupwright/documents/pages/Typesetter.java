package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns text into runs of glyphs. A sign that no face has becomes visible as its number and is reported. */
final class Typesetter {
    private static final int CONTEXT = 40;

    private final FontShelf shelf;
    private final PageGeometry geometry;
    private final Map<Integer, String> missing = new LinkedHashMap<>();

    Typesetter(FontShelf shelf, PageGeometry geometry) {
        this.shelf = shelf;
        this.geometry = geometry;
    }

    /** The pages it sets for. */
    PageGeometry geometry() {
        return geometry;
    }

    /** Runs for a text, in order; a sign the style's face lacks is taken from the code face. */
    List<Run> set(String text, Style style) {
        List<Run> runs = new ArrayList<>();
        StringBuilder same = new StringBuilder();
        Face current = style.face();
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int sign = text.codePointAt(i);
            Face face = faceFor(sign, style.face());
            String shown = shelf.has(face, sign) ? Character.toString(sign) : replaced(sign, text);
            if (face != current && same.length() > 0) {
                runs.add(run(same.toString(), style.in(current)));
                same.setLength(0);
            }
            current = face;
            same.append(shown);
        }
        if (same.length() > 0) {
            runs.add(run(same.toString(), style.in(current)));
        }
        return runs;
    }

    /** A run whose signs are known to be there. */
    Run run(String text, Style style) {
        double thousandths =
                text.codePoints().mapToDouble(sign -> advance(sign, style)).sum();
        return new Run(text, style, thousandths * style.size() / 1000);
    }

    /** Room of one sign in thousandths of the size. */
    double advance(int sign, Style style) {
        return shelf.advance(sign, style);
    }

    /** One sentence for each sign that was replaced. */
    List<String> warnings(Labels labels) {
        return missing.entrySet().stream()
                .map(entry -> labels.text(
                        "warning.glyph", name(entry.getKey()), "[" + name(entry.getKey()) + "]", entry.getValue()))
                .toList();
    }

    private Face faceFor(int sign, Face wanted) {
        boolean lent = !shelf.has(wanted, sign) && shelf.has(Face.MONO, sign);
        return lent ? Face.MONO : wanted;
    }

    private String replaced(int sign, String text) {
        missing.putIfAbsent(
                sign,
                text.length() <= CONTEXT ? text : text.substring(0, CONTEXT).strip() + " …");
        return "[" + name(sign) + "]";
    }

    private static String name(int sign) {
        return "U+%04X".formatted(sign);
    }
}
