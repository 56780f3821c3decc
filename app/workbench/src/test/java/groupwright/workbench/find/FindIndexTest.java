package groupwright.workbench.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.workbench.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindIndexTest {
    private static final FindIndex INDEX = FindIndex.of(Sample.definition(), Catalogue.ofServices());

    private static String first(String query) {
        List<Found> found = INDEX.find(query, 5);
        return found.isEmpty() ? "" : name(found.get(0));
    }

    private static String name(Found found) {
        return found instanceof Found.OfFigure figure ? figure.ask().toString() : found.mark();
    }

    @ParameterizedTest(name = "{0} finds {1}")
    @CsvSource(textBlock = """
        R-005,                  R-005
        r5,                     R-005
        c-2,                    C-002
        no step that,           R-005
        rhythm step,            R-005
        RHYTHM,                 R-005
        largest step C-002,     largest-step C-002
        climb cadence steep g2, ''
        climb cadence steep G-002 C-003, climb-cadence C-003 G-002 climb=steep-12
        zzz,                    ''
        """)
    void findsTheBestFirst(String query, String expected) {
        assertEquals(expected, first(query));
    }

    @Test
    void anEmptyQueryFindsNothing() {
        assertTrue(INDEX.find("  ", 5).isEmpty());
    }

    @Test
    void wordsInsideRecordsAreFoundAfterTitles() {
        List<String> found =
                INDEX.find("cadence", 200).stream().map(FindIndexTest::name).toList();
        assertTrue(found.indexOf("climb-cadence C-002 G-002 climb=steep-12") >= 0, found.toString());
        assertTrue(found.stream().anyMatch(name -> name.startsWith("R-")), found.toString());
    }

    @Test
    void noMoreThanAskedFor() {
        assertEquals(3, INDEX.find("e", 3).size());
    }
}
