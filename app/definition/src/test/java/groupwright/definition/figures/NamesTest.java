package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ServiceLoader;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The file of names and the figures belong together. */
class NamesTest {
    @Test
    void everyNameIsThatOfOneFigure() {
        TreeSet<String> ids = new TreeSet<>();
        for (FigureFamily family : ServiceLoader.load(FigureFamily.class)) {
            if (family.getClass().getPackage().equals(Names.class.getPackage())) {
                family.figures().stream().map(Figure::id).forEach(ids::add);
            }
        }
        assertEquals(
                List.copyOf(ids),
                List.copyOf(new TreeSet<>(ResourceBundle.getBundle("groupwright.definition.figures.names", Locale.ROOT)
                        .keySet())));
    }
}
