package groupwright.workbench.look;

import groupwright.documents.charts.Palette;
import java.util.List;

/** The colours of charts in the theme that is set. */
public final class ScreenPalette {
    private ScreenPalette() {}

    /**
     * Colours for a chart or sign.
     *
     * @param ground what it stands on
     */
    public static Palette on(Token ground) {
        return new Palette(
                ground.colour(),
                Token.INK.colour(),
                Token.MUTED.colour(),
                Token.EDGE.colour(),
                Token.HAIRLINE.colour(),
                Token.ACCENT.colour(),
                Token.MEETS.colour(),
                Token.MISSES.colour(),
                Token.CLOSE.colour(),
                Token.MISSING.colour(),
                List.of(
                        Token.CONCEPT_1.colour(),
                        Token.CONCEPT_2.colour(),
                        Token.CONCEPT_3.colour(),
                        Token.CONCEPT_4.colour()));
    }
}
