package groupwright.workbench.riders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Component;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.Sample;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the sample project. */
class RidersReadingTest {
    private static final RidersSheet SHEET = new RidersReading(Sample.ledger(), Locale.UK).sheet();

    private static List<String> line(String field) {
        return SHEET.lines().stream()
                .filter(line -> line.field().equals(field))
                .findFirst()
                .orElseThrow()
                .cells()
                .stream()
                .map(cell -> (cell.shown() + " " + cell.unit() + " " + cell.behind())
                        .replace('\u202f', ' ')
                        .strip())
                .toList();
    }

    private static NeedRow need(String id) {
        return SHEET.needs().stream()
                .filter(need -> need.id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = { // inputs of the sample; W/kg by hand: 270/72, 190/80, 150/76
                "powerHour_W | 270 W 3.75 W/kg | 190 W 2.38 W/kg | 150 W 1.97 W/kg",
                "luggage_kg | 1.2 kg 83.5 kg in all | 1.5 kg 94.5 kg in all | 18.5 kg 107 kg in all",
                "tyre_mm | 57-622 | 57-622 | 57-622",
                "climbs | 15 %, 7 %, 18 % | 12 %, 7 %, 16 % | 8 %, 5 %, 11 %",
                "yearly_km | 9000 km | 5500 km | 6200 km"
            })
    void groupsStandSideBySide(String field, String racer, String trail, String packer) {
        assertEquals(List.of(racer, trail, packer), line(field));
    }

    @Test
    void everyFieldOfTheDescriptionHasItsPlace() {
        Set<String> shown = SHEET.lines().stream().map(RidersSheet.Line::field).collect(Collectors.toSet());
        Set<String> elsewhere = Set.of("id", "retired", "beadSeat_mm", "terrain"); // wheel row, drawing, actions
        for (Component component : RecordKinds.RIDER_GROUP.shape().components()) {
            assertTrue(shown.contains(component.name()) || elsewhere.contains(component.name()), component.name());
        }
    }

    @Test
    void sharesAreThoseOfTheImportances() {
        assertEquals(
                List.of(45, 35, 20), // 9, 7 and 4 of 20
                SHEET.groups().stream().map(RidersSheet.Group::share).toList());
    }

    static IntStream seeds() {
        return IntStream.range(0, 50);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void sharesAddUpToAHundredAndMissNoneByAWhole(int seed) {
        Random random = new Random(seed);
        List<Integer> importances =
                random.ints(1 + random.nextInt(8), 1, 11).boxed().toList();
        List<Integer> shares = RidersReading.shares(importances);
        int sum = importances.stream().mapToInt(Integer::intValue).sum();
        assertEquals(100, shares.stream().mapToInt(Integer::intValue).sum(), "seed " + seed);
        for (int i = 0; i < shares.size(); i++) {
            double exact = 100.0 * importances.get(i) / sum;
            assertTrue(Math.abs(shares.get(i) - exact) < 1, "seed " + seed);
        }
    }

    @Test
    void needsKeepTheRidersWordsAndNameWhoAnswersThem() {
        NeedRow need = need("N-003");
        assertEquals("“Between those two cogs it is either too hard or too easy.”", need.words());
        assertTrue(
                need.answeredBy().contains(Sample.id("R-005")),
                need.answeredBy().toString());
        assertTrue(need("N-006").isUnanswered());
    }

    @Test
    void aContradictionIsShownOnBothSides() {
        assertEquals(
                List.of(Sample.id("N-006"), Sample.id("N-007")), need("N-008").against());
        assertEquals(List.of(Sample.id("N-008")), need("N-007").against());
    }

    @Test
    void facetsCountWhatTheyShow() {
        List<Long> counts = NeedFacet.of(SHEET).stream()
                .map(facet -> SHEET.needs().stream().filter(facet::holds).count())
                .toList();
        assertEquals(45, counts.get(0)); // the files of the sample
        assertEquals(15, counts.get(1)); // of them "importance": "must"
        assertEquals(7, counts.size());
    }
}
