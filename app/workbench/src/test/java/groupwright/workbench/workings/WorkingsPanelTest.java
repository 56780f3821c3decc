package groupwright.workbench.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.Ledger;
import groupwright.workbench.Components;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorkingsPanelTest {
    private static WorkingsPanel panel(String question, List<Ask> selected) {
        Ledger ledger = Sample.ledger();
        Ask ask = Sample.ask(question);
        WorkingsPanel panel = new WorkingsPanel(Locale.ENGLISH, selected::add, address -> {}, document -> {});
        panel.show(
                new WorkingsReading(ledger, WorkingsReading.Before.NOTHING, Locale.ENGLISH).of(ask),
                ledger.definition());
        return panel;
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void showsWhereAClimbCadenceComesFrom(Theme theme) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(theme, 1);
            WorkingsPanel panel = panel("climb-cadence C-002 G-002 climb=steep-12", new ArrayList<>());
            Picture.keep(Picture.of(panel, 328, 1300, 1.5), "workings-" + theme);
            List<String> names = Components.names(panel);
            assertTrue(names.contains("too close to call"), names.toString());
            assertTrue(names.stream().anyMatch(name -> name.contains("50.7")), names.toString());
            assertTrue(names.contains("R-001"), names.toString());
        });
    }

    @Test
    void anExactFigureSaysSo() throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            WorkingsPanel panel = panel("largest-step C-002 from-teeth=14", new ArrayList<>());
            Picture.keep(Picture.of(panel, 328, 900, 1.5), "workings-exact");
            Picture.keep(Picture.of(panel("mass-p90 C-002", new ArrayList<>()), 328, 1500, 1.5), "workings-mass");
            Picture.keep(Picture.of(panel("steps C-002", new ArrayList<>()), 328, 900, 1.5), "workings-list");
            assertTrue(Components.names(panel).contains("Exact: whole counts, no band."));
        });
    }

    @Test
    void anotherConceptIsOneClickAway() throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            List<Ask> selected = new ArrayList<>();
            WorkingsPanel panel = panel("largest-step C-002 from-teeth=14", selected);
            Components.click(Components.named(panel, "workings.other.C-003").orElseThrow());
            assertEquals(
                    List.of("largest-step C-003 from-teeth=14"),
                    selected.stream().map(Ask::toString).toList());
        });
    }

    @Test
    void whatMovesANumberStandsMostFirst() {
        WorkingsSheet sheet = new WorkingsReading(Sample.ledger(), WorkingsReading.Before.NOTHING, Locale.ENGLISH)
                .of(Sample.ask("gear-range C-002"));
        assertEquals(
                List.of("cogs 10 → 11 −40.91\u202F%", "cogs 45 → 46 +10.00\u202F%"),
                sheet.movers().stream()
                        .map(mover -> mover.label() + " " + mover.change() + " " + mover.effect())
                        .toList());
        WorkingsSheet cost = new WorkingsReading(Sample.ledger(), WorkingsReading.Before.NOTHING, Locale.ENGLISH)
                .of(Sample.ask("unit-cost C-002"));
        assertEquals(5, cost.movers().size());
        assertTrue(cost.movers().get(0).label().matches("P-\\d+ .*"), "a part is named: " + cost.movers());
        assertTrue(
                cost.movers().stream().allMatch(mover -> mover.effect().endsWith("\u202FEUR")),
                cost.movers().toString());
    }
}
