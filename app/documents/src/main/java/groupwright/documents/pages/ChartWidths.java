package groupwright.documents.pages;

import groupwright.documents.charts.InterFont;
import groupwright.documents.charts.TextWidths;
import java.awt.Color;
import java.util.List;

/** Measures text of charts as pages set it. */
class ChartWidths implements TextWidths {
    private final Typesetter typesetter;

    ChartWidths(Typesetter typesetter) {
        this.typesetter = typesetter;
    }

    @Override
    public double width(String text, InterFont font, double size) {
        return runs(text, font, size, Paper.INK).stream()
                .mapToDouble(Run::width)
                .sum();
    }

    List<Run> runs(String text, InterFont font, double size, Color colour) {
        return typesetter.set(text, new Style(Face.of(font), size, colour, Style.Digits.TABULAR, 0));
    }
}
