package groupwright.workbench.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Level;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RankingTest {
    private static final List<Found> THINGS = List.of(
            new Found("G-001", "Marathon racer", "", ""),
            new Found("G-002", "All-day trail rider", "", ""),
            new Found("G-003", "Rider with bags", "", ""),
            new Found("G-012", "Über-Trail", "", ""),
            new Found("G-120", "Stridered", "", "rides"));

    private static List<String> ids(String typed) {
        return Ranking.rank(typed, THINGS).stream().map(Found::id).toList();
    }

    @Test
    void titlesThatBeginSoComeBeforeWordsThatDoAndThoseBeforeTheRest() {
        assertEquals(List.of("G-003", "G-002", "G-120"), ids("rider"));
        assertEquals(List.of("G-002", "G-012"), ids("trail"));
    }

    @Test
    void numbersAreThoseOfIds() {
        assertEquals(List.of("G-012", "G-120"), ids("12"));
        assertEquals("G-002", ids("g-002").get(0));
    }

    @Test
    void allWordsMustFit() {
        assertEquals(List.of("G-002"), ids("rider day"));
        assertEquals(List.of(), ids("rider xyz"));
    }

    @Test
    void accentsAndCapitalsDoNotCountAndNothingTypedFindsAll() {
        assertEquals(List.of("G-012"), ids("UBER"));
        assertEquals(5, ids("  ").size());
    }

    @Test
    void onlyFiguresThatMeasureTheProductCanBeCriteria() {
        Catalogue catalogue = Catalogue.ofServices();
        List<Figure> figures = Criteria.figures(catalogue);
        assertTrue(figures.stream().allMatch(figure -> figure.level() == Level.CALCULUS));
        assertTrue(figures.stream().noneMatch(figure -> figure.id().equals("verdict")));
        assertEquals(
                "largest-step", Criteria.find(catalogue, "largest st").get(0).id());
        assertTrue(Criteria.find(catalogue, "rider group").stream()
                .anyMatch(found -> found.id().equals("climb-cadence")));
    }

    @Test
    void choosingAFigureBringsUnitParametersAndSide() {
        Figure step = Catalogue.ofServices().find("largest-step").orElseThrow();
        Criterion criterion = new Criterion(
                "k1",
                "climb-cadence",
                Settings.NONE.with("climb", "steep-12").with("from-teeth", "14"),
                Criterion.Comparator.AT_LEAST,
                Amount.of(50),
                Optional.empty(),
                "rpm",
                Optional.empty());
        Map<String, Optional<?>> values = Criteria.choosing(step, Shape.of(Criterion.class), criterion, "EUR");
        assertEquals(Optional.of("%"), values.get("unit"));
        assertEquals(Optional.of(Settings.NONE.with("from-teeth", "14")), values.get("parameters"));
        assertEquals(Optional.of(Criterion.Comparator.AT_MOST), values.get("comparator"));
    }
}
