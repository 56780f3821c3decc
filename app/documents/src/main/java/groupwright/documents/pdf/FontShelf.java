package groupwright.documents.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** The faces of one document, read when first asked for, and the widths of their signs. */
final class FontShelf {
    private final Map<Face, BaseFont> drawn = new EnumMap<>(Face.class);
    private final Map<Face, BaseFont> tabular = new EnumMap<>(Face.class);
    private final Map<Face, Map<Integer, Integer>> widths = new EnumMap<>(Face.class);

    /**
     * The font to write a style with. Tabular digits are a font of their own whose digits all advance like the zero:
     * if gaps made up for narrow digits, programs that copy or search text would read {@code 1 .64}.
     */
    BaseFont font(Style style) {
        if (style.digits() == Style.Digits.PROPORTIONAL || style.face() == Face.MONO) {
            return drawn(style.face());
        }
        return tabular.computeIfAbsent(style.face(), face -> {
            BaseFont font = read(face);
            for (char digit = '0'; digit <= '9'; digit++) {
                font.setCharAdvance(digit, width(face, '0'));
            }
            return font;
        });
    }

    boolean has(Face face, int sign) {
        return drawn(face).charExists(sign);
    }

    /** Width of a sign as drawn, in thousandths of the size. */
    int width(Face face, int sign) {
        return widths.computeIfAbsent(face, key -> new HashMap<>())
                .computeIfAbsent(sign, key -> drawn(face).getWidth(Character.toString(sign)));
    }

    private BaseFont drawn(Face face) {
        return drawn.computeIfAbsent(face, FontShelf::read);
    }

    private static BaseFont read(Face face) {
        String name = face.resource().substring(face.resource().lastIndexOf('/') + 1);
        try (InputStream stream = FontShelf.class.getResourceAsStream(face.resource())) {
            if (stream == null) {
                throw new IllegalStateException("the font " + face.resource() + " is not on the class path");
            }
            return BaseFont.createFont(
                    name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, stream.readAllBytes(), null);
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + name + " cannot be read", broken);
        }
    }
}
