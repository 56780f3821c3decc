package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Unit;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every figure has a name in every language there is. */
class FigureNamesTest {
    private static final Catalogue CATALOGUE = Catalogue.ofServices();
    private static final FigureNames GERMAN = FigureNames.in(Locale.GERMAN);

    private static Properties file(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader =
                new InputStreamReader(FigureNames.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }

    @Test
    void theGermanFileNamesEachFigureAndWhatItLeavesOutAndNothingElse() throws IOException {
        TreeSet<String> keys = new TreeSet<>();
        for (Figure figure : CATALOGUE.all()) {
            keys.add(figure.id());
            if (!figure.leavesOut().isEmpty()) {
                keys.add(figure.id() + ".leavesOut");
            }
        }
        assertEquals(
                List.copyOf(keys),
                List.copyOf(new TreeSet<>(file("names_de.properties").stringPropertyNames())));
    }

    @Test
    void noTwoFiguresShareAGermanName() {
        List<String> names = CATALOGUE.all().stream().map(GERMAN::of).toList();
        assertEquals(List.copyOf(new TreeSet<>(names)), names.stream().sorted().toList());
    }

    @Test
    void aReaderOfGermanReadsGermanEvenFromSwitzerland() {
        Figure range = CATALOGUE.find("gear-range").orElseThrow();
        assertEquals("Gesamtbandbreite", GERMAN.of(range));
        assertEquals("Gesamtbandbreite", FigureNames.in(new Locale("de", "CH")).of(range));
        assertNotEquals(range.leavesOut(), GERMAN.leavesOut(range));
    }

    @Test
    void anyOtherReaderReadsTheFiguresOwnNames() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.US, Locale.FRENCH, Locale.ROOT)) {
            for (Figure figure : CATALOGUE.all()) {
                assertEquals(figure.name(), FigureNames.in(locale).of(figure));
                assertEquals(figure.leavesOut(), FigureNames.in(locale).leavesOut(figure));
            }
        }
    }

    @Test
    void aFigureOfSomebodyElseKeepsItsName() {
        Figure own = Figure.named("own-figure", "Own figure")
                .formula("1")
                .source("this test")
                .leavesOut("everything")
                .example("own-figure", "1")
                .computedBy(in -> Quantity.of(1, Unit.NONE));
        assertEquals("Own figure", GERMAN.of(own));
        assertEquals("everything", GERMAN.leavesOut(own));
    }
}
