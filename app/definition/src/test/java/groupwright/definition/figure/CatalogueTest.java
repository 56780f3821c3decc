package groupwright.definition.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a catalogue refuses, and how its figures are named. */
class CatalogueTest {
    private static Figure.Builder named(String id) {
        return Figure.named(id, id).formula("none").source("made up").example(id, "0");
    }

    private static Figure using(String id, String... others) {
        return named(id).uses(others).computedBy(in -> Quantity.of(0, Unit.NONE));
    }

    private static String refused(Figure... figures) {
        return assertThrows(IllegalArgumentException.class, () -> new Catalogue(List.of(figures)))
                .getMessage();
    }

    @Test
    void anIdStandsOnce() {
        assertEquals("two figures have the id same", refused(using("same"), using("other"), using("same")));
    }

    @Test
    void whatIsUsedIsThere() {
        assertEquals("user uses nobody, which is no figure", refused(using("user", "nobody")));
    }

    @Test
    void whatIsUsedStandsNoHigher() {
        Figure high = named("high").level(Level.ASSESSMENT).computedBy(in -> Quantity.of(0, Unit.NONE));
        assertEquals("low uses high, which stands above it", refused(using("low", "high"), high));
    }

    @Test
    void figuresDoNotUseEachOtherInACircle() {
        assertEquals(
                "figures use each other in a circle: aa -> bb -> cc -> aa",
                refused(using("aa", "bb"), using("bb", "cc", "dd"), using("cc", "aa"), using("dd")));
    }

    @Test
    void aFigureMayFollowRecordsByAskingItself() {
        Catalogue catalogue = new Catalogue(List.of(using("aa", "aa", "bb"), using("bb")));
        assertEquals(
                List.of("aa", "bb"), catalogue.all().stream().map(Figure::id).toList());
    }

    private final Catalogue catalogue = new Catalogue(List.of(named("range")
            .of(Scope.CONCEPT)
            .with(Parameter.whole("from-teeth", 14, "smallest cog that counts"))
            .with(new Parameter(
                    "share",
                    Parameter.Type.NUMBER,
                    Parameter.Presence.OPTIONAL,
                    Optional.of("4.50"),
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    List.of(),
                    "a share"))
            .computedBy(in -> Quantity.of(0, Unit.NONE))));

    private String spelled(String text) {
        return FigureText.parse(text)
                .resolve(catalogue, Optional.of(RecordId.of("C", 9)))
                .toString();
    }

    @ParameterizedTest
    @CsvSource({
        "range C-001, range C-001",
        "range lead, range C-009",
        "' range   from-teeth=14  C-001 ', range C-001",
        "range C-001 from-teeth=14.0, range C-001",
        "range C-001 share=4.5, range C-001",
        "range C-001 share=5.0 from-teeth=12, range C-001 from-teeth=12 share=5"
    })
    void aQuestionIsSpelledInOneWay(String given, String spelled) {
        assertEquals(spelled, spelled(given));
        assertEquals(spelled, spelled(spelled));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "rnage C-001",
                "range",
                "range G-001",
                "range C-001 C-002",
                "range C-001 lead",
                "range C-1",
                "range X-001",
                "range C-001 from-teeth=x",
                "range C-001 from-teeth=1.5",
                "range C-001 from=1",
                "range C-001 share=1 share=1",
                "range C-001 =1",
                "range C-001 share="
            })
    void whatIsNoQuestionIsRefusedInWords(String text) {
        assertThrows(Invalid.class, () -> spelled(text));
    }

    @Test
    void equalQuestionsAreEqualHoweverTheyWereMade() {
        Figure range = catalogue.find("range").orElseThrow();
        Subject subject = Subject.of(RecordId.of("C", 1));
        Ask usual = new Ask(range, subject, Settings.NONE);
        Ask said =
                new Ask(range, subject, Settings.NONE.with("from-teeth", "14").with("share", "4.5"));
        assertEquals(usual, said);
        assertEquals(usual.hashCode(), said.hashCode());
        assertEquals(0, usual.compareTo(said));
    }
}
