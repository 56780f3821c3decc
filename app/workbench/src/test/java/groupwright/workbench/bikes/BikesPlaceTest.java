package groupwright.workbench.bikes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Scope;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.lists.FixedTable;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BikesPlaceTest {
    private static final int WIDTH = 936;
    private static final int HEIGHT = 776;

    private final List<PlaceName> gone = new ArrayList<>();

    private BikesPlace shown(LedgerBench bench) {
        BikesPlace place = bench.show(new BikesPlace(bench, Catalogue.ofServices(), gone::add, Optional.of(() -> {})));
        paint(place);
        return place;
    }

    private static void paint(BikesPlace place) {
        Picture.of(place.component(), WIDTH, HEIGHT, 1);
        Picture.of(place.component(), WIDTH, HEIGHT, 1);
    }

    private void with(Definition definition, BiConsumer<BikesPlace, LedgerBench> act) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            LedgerBench bench = new LedgerBench(Locale.UK, definition);
            act.accept(shown(bench), bench);
        });
    }

    private static Optional<Component> named(BikesPlace place, String name) {
        return Components.named((Container) place.component(), name);
    }

    private static FixedTable table(BikesPlace place, String name) {
        return (FixedTable) named(place, name).orElseThrow();
    }

    private static void press(FixedTable table, String key) {
        table.getActionMap()
                .get("own " + key)
                .actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, key));
    }

    private static void click(FixedTable table, int row, int column, double x, double y) {
        Rectangle cell = table.getCellRect(row, column, false);
        table.changeSelection(row, column, false, false);
        MouseEvent clicked = new MouseEvent(
                table,
                MouseEvent.MOUSE_CLICKED,
                0,
                0,
                cell.x + (int) x,
                cell.y + (int) y,
                1,
                false,
                MouseEvent.BUTTON1);
        for (java.awt.event.MouseListener listener : table.getMouseListeners()) {
            listener.mouseClicked(clicked);
        }
    }

    @Test
    void enterOnACellOpensItsChecks() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            assertTrue(named(place, "bikes.checks").isEmpty());
            FixedTable matrix = table(place, "bikes.matrix");
            matrix.changeSelection(3, 2, false, false);
            press(matrix, "ENTER");
            paint(place);
            List<String> names = Components.names(place.component());
            assertTrue(names.contains("C-003 on B-004 Steel tourer"), names.toString());
            assertTrue(named(place, "bikes.check.Chain angle").isPresent(), names.toString());
            Components.click(named(place, "bikes.check.Chain angle").orElseThrow());
            assertEquals(
                    "chain-angle C-003 B-004", bench.selected().orElseThrow().toString());
        });
    }

    @Test
    void aClickOnANumberSelectsItAndOpensNothing() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            click(table(place, "bikes.matrix"), 0, 1, 30, Measures.THIRD_LINE);
            assertEquals("chain-angle", bench.selected().orElseThrow().figure().id());
            assertEquals(
                    Optional.of(Sample.id("B-001")),
                    bench.selected().orElseThrow().subject().get(Scope.BIKE));
            assertTrue(named(place, "bikes.checks").isEmpty());
        });
    }

    @Test
    void whatIsMissingOpensItsField() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            click(table(place, "bikes.list"), 2, 0, 100, Measures.THIRD_LINE);
            assertEquals(List.of(Address.parse("B-003.hangerAngle_deg").orElseThrow()), bench.opened);
            FixedTable matrix = table(place, "bikes.matrix");
            matrix.changeSelection(0, 0, false, false);
            press(matrix, "F2");
            assertEquals(Sample.id("C-001"), bench.opened.get(1).record());
        });
    }

    @Test
    void walkingTheRowsDrawsEachBike() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            table(place, "bikes.list").changeSelection(5, 0, false, false);
            paint(place);
            assertTrue(
                    Components.names(place.component()).contains("B-006 from above, lowest gear"),
                    Components.names(place.component()).toString());
        });
    }

    @Test
    void aBikesFormEditsEveryFieldAndTheMatrixFollows() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            FixedTable bikes = table(place, "bikes.list");
            bikes.changeSelection(3, 0, false, false);
            press(bikes, "ENTER");
            paint(place);
            assertTrue(Components.names(place.component()).stream().anyMatch(name -> name.contains("Hanger angle")));
            bench.edit(
                    Optional.empty(),
                    definition -> definition.with(
                            Address.parse("B-004.chainstay_mm").orElseThrow(), Optional.of(Amount.of(520))),
                    refused -> {});
            paint(place);
            assertTrue(
                    ((groupwright.workbench.lists.ContentCell.Content) bikes.getValueAt(3, 0))
                            .name()
                            .contains("chainstay 520"),
                    "the row shows what was written");
        });
    }

    @Test
    void addingABikeAsksForItsFields() throws Exception {
        with(Sample.definition(), (place, bench) -> {
            ((AbstractButton) named(place, "bikes.add").orElseThrow()).doClick(0);
            paint(place);
            assertTrue(named(place, "form.add").isPresent());
        });
    }

    @Test
    void withoutTheDocumentThereIsNoButtonForIt() throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());
            BikesPlace place = bench.show(new BikesPlace(bench, Catalogue.ofServices(), gone::add, Optional.empty()));
            assertTrue(named(place, "bikes.answer").isEmpty());
            assertTrue(named(shown(bench), "bikes.answer").isPresent());
        });
    }

    @Test
    void anEmptyListSaysWhatToDoNext() throws Exception {
        with(Definition.of(Sample.definition().project()), (place, bench) -> {
            List<String> names = Components.names(place.component());
            assertTrue(names.contains("Add the first bike"), names.toString());
            assertFalse(named(place, "bikes.matrix").isPresent());
        });
    }

    @Test
    void withoutConceptsTheBikesStandAloneAndTheWayOnIsNamed() throws Exception {
        Definition bikesOnly = Definition.of(Sample.definition().project());
        for (Bike bike : Sample.definition().all(RecordKinds.BIKE)) {
            bikesOnly = bikesOnly.with(bike);
        }
        with(bikesOnly, (place, bench) -> {
            List<String> names = Components.names(place.component());
            assertTrue(names.contains("6 bikes wait for a concept to be checked against."), names.toString());
            ((AbstractButton) Components.all((Container) place.component()).stream()
                            .filter(child ->
                                    child instanceof AbstractButton button && "Go to concepts".equals(button.getText()))
                            .findFirst()
                            .orElseThrow())
                    .doClick(0);
            assertEquals(List.of(PlaceName.CONCEPTS), gone);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "LIGHT, 1, 936, 776",
        "DARK, 1, 936, 776",
        "LIGHT, 2, 936, 776",
        "LIGHT, 1, 612, 476",
        "DARK, 1, 2056, 1316"
    })
    void everySizeAndTheme(Theme theme, double scale, int width, int height) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(theme, scale);
            LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());
            BikesPlace place = shown(bench);
            int wide = (int) (width * scale);
            int high = (int) (height * scale);
            Picture.of(place.component(), wide, high, 1);
            String name = "bikes-" + theme + "-" + scale + "-" + width;
            Picture.keep(Picture.of(place.component(), wide, high, 1), name);
            BikesView view = (BikesView) place.component();
            Matrix matrix = view.matrix();
            int columns =
                    matrix.concepts().getPreferredSize().width + matrix.bikes().getPreferredSize().width;
            if (width >= 936) {
                assertTrue(columns <= matrix.getWidth(), columns + " pixels of columns in " + matrix.getWidth());
            }
            int row = Look.pixels(Measures.ROW);
            assertEquals(row, matrix.bikes().getRowHeight(0));
            assertEquals(row, matrix.concepts().getRowHeight(0));
        });
    }
}
