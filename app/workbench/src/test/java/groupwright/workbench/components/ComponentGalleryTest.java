package groupwright.workbench.components;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.workbench.look.Contrast;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Paints the gallery; the pictures are left in {@code target/gallery} to be looked at. */
class ComponentGalleryTest {
    @ParameterizedTest(name = "{0} at {1}, {2} pixels a point")
    @CsvSource({"LIGHT, 1.0, 1", "DARK, 1.0, 1", "LIGHT, 1.0, 2", "DARK, 1.5, 1", "LIGHT, 2.0, 1"})
    void everyStateIsPaintedInTheColoursOfItsTheme(Theme theme, double scale, int dense) throws IOException {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = Shot.of(ComponentGallery.build(), Token.SURFACE, dense);
        File picture = new File("target/gallery/" + theme + "-" + scale + "-" + dense + ".png");
        assertTrue(
                picture.getParentFile().isDirectory() || picture.getParentFile().mkdirs());
        ImageIO.write(shot.image(), "png", picture);
        for (Token token : new Token[] {
            Token.INK,
            Token.MUTED,
            Token.ACCENT,
            Token.WASH,
            Token.MEETS,
            Token.MISSES,
            Token.CLOSE,
            Token.MISSING,
            Token.CHANGED,
            Token.CONCEPT_1,
            Token.CONCEPT_2,
            Token.CONCEPT_3
        }) {
            assertTrue(shot.area(token) > 10, token + " in " + theme);
        }
    }
}
