package groupwright.workbench.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.MissingResourceException;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LookTest {
    @ParameterizedTest
    @EnumSource
    void everyTokenAndLengthIsSet(Theme theme) {
        Look.setUp(theme, 1, Contrast.USUAL);
        for (Token token : Token.values()) {
            assertEquals(255, token.colour().getAlpha(), token.name());
        }
        for (Metric metric : Metric.values()) {
            assertTrue(metric.px() > 0, metric.name());
        }
        assertEquals(theme, Look.theme());
        assertEquals(Token.RAISED.colour(), UIManager.getColor("Table.background"));
        assertEquals(Token.GROUND.colour(), UIManager.getColor("Panel.background"));
        assertEquals(Token.EDGE.colour(), UIManager.getColor("Button.borderColor"));
        assertEquals(Token.ACCENT.colour(), UIManager.getColor("Component.focusColor"));
        assertEquals(2, UIManager.getInt("Component.focusWidth"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void fontsRowsAndLengthsGrowAlike(double scale) {
        Look.setUp(Theme.LIGHT, scale, Contrast.USUAL);
        assertEquals(scale, Look.scale(), 1e-6);
        assertEquals(Math.round(176 * scale), Metric.RAIL.px());
        assertEquals(13 * scale, new JLabel("").getFont().getSize2D(), 0.5);
        assertEquals(28 * scale, Type.NUMBER.font(Weight.STRONG).getSize2D(), 1e-3);
        assertEquals("Inter SemiBold", Type.BODY.font(Weight.STRONG).getFamily());
        assertEquals(28 * scale, new JTable(1, 1).getRowHeight(), 0.5);
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
    }

    @Test
    void aThemeCanBeChangedWhileThingsAreShown() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
        JTable table = new JTable(1, 1);
        Look.setUp(Theme.DARK, 1, Contrast.USUAL);
        SwingUtilities.updateComponentTreeUI(table);
        assertEquals(Token.RAISED.colour(), table.getBackground());
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
    }

    @Test
    void highContrastTurnsHairlinesIntoEdges() {
        Look.setUp(Theme.LIGHT, 1, Contrast.HIGH);
        assertEquals(Token.EDGE.colour(), Token.HAIRLINE.colour());
        assertEquals(Token.EDGE.colour(), UIManager.getColor("Table.gridColor"));
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
        assertNotEquals(Token.EDGE.colour(), Token.HAIRLINE.colour());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 2.1, Double.NaN})
    void otherScalesAreRefused(double scale) {
        assertThrows(IllegalArgumentException.class, () -> Look.setUp(Theme.LIGHT, scale, Contrast.USUAL));
    }

    @Test
    void digitsAreAllAsWideAsTheZero() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
        for (Type type : Type.values()) {
            assertEquals(type.width("0000", Weight.REGULAR), type.width("1147", Weight.REGULAR), 1e-9);
        }
    }

    @Test
    void aCutTextFitsAndSaysSo() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
        String cut = Type.BODY.cut("No step that breaks the rhythm", Weight.REGULAR, 80);
        assertTrue(cut.endsWith("…") && cut.startsWith("No step"), cut);
        assertTrue(Type.BODY.width(cut, Weight.REGULAR) <= 80);
        assertEquals("R-001", Type.BODY.cut("R-001", Weight.REGULAR, 80));
    }

    @Test
    void namesInScriptsThatInterLacksHaveWidth() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
        assertTrue(Type.BODY.width("山", Weight.REGULAR) > 0);
    }

    @Test
    void wordsAreThoseAskedForWhateverTheMachineSpeaks() {
        Locale machine = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMAN);
            Words words = Words.of(LookTest.class, Locale.FRENCH);
            assertEquals("3 of 60 it''s".replace("''", "'"), words.text("test.count", 3, 60));
            assertThrows(MissingResourceException.class, () -> words.text("test.unknown"));
        } finally {
            Locale.setDefault(machine);
        }
    }
}
