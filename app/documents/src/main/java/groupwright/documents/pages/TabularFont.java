package groupwright.documents.pages;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Makes of an OpenType font one whose digits are its tabular figures, all equally wide. The font names them in its feature
 * {@code tnum} (OpenType 1.9, tables GSUB and cmap); a PDF can only choose glyphs by sign, so the table of signs is written
 * anew. Every advance then is the glyph's own, which PDF/A wants, and copied text reads {@code 1.64} without gaps.
 */
final class TabularFont {
    private static final int DIRECTORY = 12;
    private static final int DIRECTORY_ENTRY = 16;
    private static final int SINGLE = 1;
    private static final int EXTENSION = 7;
    private static final int FULL_UNICODE = 12;

    private final ByteBuffer font;

    private TabularFont(byte[] font) {
        this.font = ByteBuffer.wrap(font);
    }

    /**
     * The font with tabular digits. O(size of the font).
     *
     * @throws IllegalArgumentException if the font has no such digits or its tables are of kinds not read here
     */
    static byte[] of(byte[] font) {
        return new TabularFont(font).withTabularDigits();
    }

    private byte[] withTabularDigits() {
        TreeMap<Integer, Integer> glyphs = glyphs();
        Map<Integer, Integer> tabular = tabularFigures();
        for (int digit = '0'; digit <= '9'; digit++) {
            Integer figure = tabular.get(glyphs.get(digit));
            if (figure == null) {
                throw new IllegalArgumentException("the font has no tabular figure for " + (char) digit);
            }
            glyphs.put(digit, figure);
        }
        byte[] signs = signs(glyphs);
        int start = (font.capacity() + 3) / 4 * 4;
        ByteBuffer changed = ByteBuffer.wrap(Arrays.copyOf(font.array(), start + signs.length));
        changed.position(start).put(signs);
        int entry = entry("cmap");
        changed.putInt(entry + 8, start).putInt(entry + 12, signs.length);
        return changed.array();
    }

    private int entry(String table) {
        int tables = unsigned(4);
        for (int i = 0; i < tables; i++) {
            int entry = DIRECTORY + i * DIRECTORY_ENTRY;
            if (tag(entry).equals(table)) {
                return entry;
            }
        }
        throw new IllegalArgumentException("the font has no table " + table);
    }

    private int table(String name) {
        return font.getInt(entry(name) + 8);
    }

    private String tag(int at) {
        return new String(font.array(), at, 4, StandardCharsets.US_ASCII);
    }

    private int unsigned(int at) {
        return Short.toUnsignedInt(font.getShort(at));
    }

    /** Glyph of each sign, from the table that covers all of Unicode. */
    private TreeMap<Integer, Integer> glyphs() {
        int cmap = table("cmap");
        for (int i = 0; i < unsigned(cmap + 2); i++) {
            int signs = cmap + font.getInt(cmap + 4 + 8 * i + 4);
            if (unsigned(signs) == FULL_UNICODE) {
                TreeMap<Integer, Integer> glyphs = new TreeMap<>();
                for (int group = 0; group < font.getInt(signs + 12); group++) {
                    int at = signs + 16 + 12 * group;
                    int first = font.getInt(at);
                    for (int sign = first; sign <= font.getInt(at + 4); sign++) {
                        glyphs.put(sign, font.getInt(at + 8) + sign - first);
                    }
                }
                return glyphs;
            }
        }
        throw new IllegalArgumentException("the font has no table of all signs");
    }

    /** What the feature puts for each glyph it covers. */
    private Map<Integer, Integer> tabularFigures() {
        int substitutions = table("GSUB");
        int features = substitutions + unsigned(substitutions + 6);
        int lookups = substitutions + unsigned(substitutions + 8);
        Map<Integer, Integer> figures = new TreeMap<>();
        for (int i = 0; i < unsigned(features); i++) {
            int named = features + 2 + 6 * i;
            if (tag(named).equals("tnum")) {
                int feature = features + unsigned(named + 4);
                for (int k = 0; k < unsigned(feature + 2); k++) {
                    int number = unsigned(feature + 4 + 2 * k);
                    read(lookups + unsigned(lookups + 2 + 2 * number), figures);
                }
            }
        }
        return figures;
    }

    private void read(int lookup, Map<Integer, Integer> figures) {
        for (int i = 0; i < unsigned(lookup + 4); i++) {
            int part = lookup + unsigned(lookup + 6 + 2 * i);
            int kind = unsigned(lookup);
            if (kind == EXTENSION) {
                kind = unsigned(part + 2);
                part += font.getInt(part + 4);
            }
            if (kind != SINGLE) {
                throw new IllegalArgumentException("tabular figures by a substitution of kind " + kind);
            }
            int[] covered = covered(part + unsigned(part + 2));
            boolean byDistance = unsigned(part) == 1;
            for (int k = 0; k < covered.length; k++) {
                int glyph = byDistance ? (covered[k] + unsigned(part + 4)) & 0xFFFF : unsigned(part + 6 + 2 * k);
                figures.put(covered[k], glyph);
            }
        }
    }

    private int[] covered(int coverage) {
        int count = unsigned(coverage + 2);
        if (unsigned(coverage) == 1) {
            return java.util.stream.IntStream.range(0, count)
                    .map(i -> unsigned(coverage + 4 + 2 * i))
                    .toArray();
        }
        return java.util.stream.IntStream.range(0, count)
                .map(i -> coverage + 4 + 6 * i)
                .flatMap(range -> java.util.stream.IntStream.rangeClosed(unsigned(range), unsigned(range + 2)))
                .toArray();
    }

    /** A table of signs with one group a sign; it is read once and not embedded. */
    private static byte[] signs(TreeMap<Integer, Integer> glyphs) {
        int length = 16 + 12 * glyphs.size();
        ByteBuffer table = ByteBuffer.allocate(12 + length);
        table.putShort((short) 0).putShort((short) 1); // version, one table
        table.putShort((short) 3).putShort((short) 10).putInt(12); // Unicode, full, where it starts
        table.putShort((short) FULL_UNICODE)
                .putShort((short) 0)
                .putInt(length)
                .putInt(0)
                .putInt(glyphs.size());
        glyphs.forEach((sign, glyph) -> table.putInt(sign).putInt(sign).putInt(glyph));
        return table.array();
    }
}
