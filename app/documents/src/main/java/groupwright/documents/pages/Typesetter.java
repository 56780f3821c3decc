package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns text into runs of glyphs. A sign that no face has becomes visible as its number and is reported. */
final class Typesetter {
    private static final int CONTEXT = 40;
    private static final int MOST_KNOWN = 20_000;

    private final FontShelf shelf;
    private final PageGeometry geometry;
    private final Map<Integer, String> missing = new LinkedHashMap<>();
    private final Map<Words, List<Run>> known = new HashMap<>(); // looked up only: most words of a document come again

    private record Words(String text, Style style) {}

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
        return set(text, style, text);
    }

    /**
     * Runs for a part of a text. Letters with marks are joined to one sign where there is such a sign.
     *
     * @param whole the text around it, for telling where a sign without glyph stands
     */
    List<Run> set(String part, Style style, String whole) {
        Words words = new Words(part, style);
        List<Run> before = known.get(words);
        if (before != null) {
            return before;
        }
        List<Run> runs = List.copyOf(runs(part, style, whole));
        if (known.size() >= MOST_KNOWN) {
            known.clear();
        }
        known.put(words, runs);
        return runs;
    }

    private List<Run> runs(String part, Style style, String whole) {
        String text = Normalizer.normalize(part, Normalizer.Form.NFC);
        List<Run> runs = new ArrayList<>();
        StringBuilder same = new StringBuilder();
        Face current = style.face();
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int sign = text.codePointAt(i);
            Face face = faceFor(sign, style.face());
            String shown = shelf.has(face, sign) ? Character.toString(sign) : replaced(sign, whole);
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
        double thousandths = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            thousandths += advance(text.codePointAt(i), style);
        }
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
        missing.putIfAbsent(sign, excerpt(text, sign));
        return "[" + name(sign) + "]";
    }

    /** The signs around, so that the place can be found by searching for them. */
    private static String excerpt(String text, int sign) {
        int[] signs = text.codePoints().toArray();
        int at = 0;
        while (at < signs.length && signs[at] != sign) {
            at++;
        }
        int from = signs.length <= CONTEXT ? 0 : Math.max(0, Math.min(at, signs.length) - CONTEXT / 2);
        int to = Math.min(signs.length, from + CONTEXT);
        String words = new String(signs, from, to - from).strip();
        return (from > 0 ? "… " : "") + words + (to < signs.length ? " …" : "");
    }

    private static String name(int sign) {
        return "U+%04X".formatted(sign);
    }
}
