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
    private final Map<Face, BaseFont> fonts = new EnumMap<>(Face.class);
    private final Map<Face, Map<Integer, Integer>> widths = new EnumMap<>(Face.class);

    BaseFont font(Face face) {
        return fonts.computeIfAbsent(face, FontShelf::read);
    }

    boolean has(Face face, int sign) {
        return font(face).charExists(sign);
    }

    /** Width of a sign in thousandths of the size. */
    int width(Face face, int sign) {
        return widths.computeIfAbsent(face, key -> new HashMap<>())
                .computeIfAbsent(sign, key -> font(face).getWidth(Character.toString(sign)));
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
