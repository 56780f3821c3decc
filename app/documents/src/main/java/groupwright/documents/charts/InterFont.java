package groupwright.documents.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The two weights everything is written in, each from the font file that comes with the program. */
public enum InterFont {
    REGULAR("/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf"),
    SEMIBOLD("/com/formdev/flatlaf/fonts/inter/Inter-SemiBold.otf");

    private final String resource;

    InterFont(String resource) {
        this.resource = resource;
    }

    /** Where the font file is on the class path. */
    public String resource() {
        return resource;
    }

    /**
     * The font for windows and pictures, read anew each time, so keep it.
     *
     * @throws IllegalStateException if Java cannot use the file; on Linux it needs some font of the system for that
     */
    public Font read() {
        return read(resource);
    }

    /**
     * Any font file that comes with the program.
     *
     * @param resource where it is on the class path
     * @throws IllegalStateException as for {@link #read()}
     */
    public static Font read(String resource) {
        try (InputStream stream = InterFont.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the font " + resource + " is not on the class path");
            }
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (FontFormatException refused) {
            throw new IllegalStateException(
                    "Java cannot read the font " + resource + "; install any font in the system", refused);
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
        }
    }
}
