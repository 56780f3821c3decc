package groupwright.workbench.concepts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.workbench.Sample;
import groupwright.workbench.lists.ContentCell;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The place with the invented sample, used by its keys and painted without a window. */
class ConceptsPlaceTest {
    private static final int NARROW = 700;
    private static final RecordId C1 = Sample.id("C-001");
    private static final RecordId C2 = Sample.id("C-002");

    private final LedgerBench bench = new LedgerBench(Sample.definition(), Locale.ENGLISH);

    @BeforeEach
    void look() {
        Look.setUp(Theme.LIGHT, 1);
    }

    private static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    private static <T> Stream<T> all(Container container, Class<T> type) {
        return all(container).stream().filter(type::isInstance).map(type::cast);
    }

    private static <T extends Component> T named(Container container, Class<T> type, String name) {
        return all(container, type)
                .filter(found -> name.equals(found.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("there is no " + name));
    }

    /** What a key does in a component that has the focus, without a window. */
    private static void press(JComponent component, String key) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        for (int condition : new int[] {JComponent.WHEN_FOCUSED, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT}) {
            Object name = component.getInputMap(condition).get(stroke);
            Action action = name == null ? null : component.getActionMap().get(name);
            if (action != null) {
                action.actionPerformed(
                        new java.awt.event.ActionEvent(component, java.awt.event.ActionEvent.ACTION_PERFORMED, ""));
                return;
            }
        }
        throw new AssertionError(key + " does nothing here");
    }

    private List<Integer> cogs(RecordId concept) {
        return bench.definition().get(concept, Concept.class).orElseThrow().cogs();
    }

    private ConceptsView view() {
        return (ConceptsView) bench.place().component();
    }

    @Test
    void oneToothMoreIsOneEditThatTheRippleNames() {
        ToothStrip strip = view().panel(C2).orElseThrow().cogs();
        press(strip, "END");
        press(strip, "UP");
        assertEquals(List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46), cogs(C2));
        assertEquals(List.of(Optional.empty()), bench.edits());
        assertEquals(
                "Cog of 46 teeth, 11 of 11, C-002", strip.getAccessibleContext().getAccessibleName());
    }

    @Test
    void aCogThatWouldMeetItsNeighbourIsRefusedInWords() {
        ConceptsView view = view();
        ConceptPanel panel = view.panel(C1).orElseThrow();
        press(panel.cogs(), "UP"); // 11 beside 12
        assertEquals("There is a cog of 12 teeth already. Remove it first, or choose another.", panel.said());
        assertEquals(List.of(), bench.edits());
        press(panel.cogs(), "DOWN");
        assertEquals("", panel.said());
        assertEquals(10, cogs(C1).get(0));
    }

    @Test
    void insertAndDeleteAddAndRemoveAndOneStaysThere() {
        ToothStrip strip = view().panel(C2).orElseThrow().cogs();
        press(strip, "END");
        press(strip, "LEFT"); // 40, before 45
        press(strip, "INSERT");
        assertEquals(List.of(35, 40, 42, 45), cogs(C2).subList(8, 12)); // sqrt(40 · 45) = 42.4
        assertEquals(10, strip.here());
        press(strip, "DELETE");
        assertEquals(List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45), cogs(C2));
    }

    @Test
    void aGearThatIsNotUsedFollowsItsCog() {
        ToothStrip strip = view().panel(C1).orElseThrow().cogs();
        press(strip, "END");
        press(strip, "DOWN"); // 38, which the sample excludes on the large ring
        Concept changed = bench.definition().get(C1, Concept.class).orElseThrow();
        assertEquals(37, changed.excludedGears().get(0).cog());
        assertEquals(36, changed.excludedGears().get(0).ring());
    }

    @Test
    void whatIsTypedIsJudgedWhileTypingAndTakenByEnter() {
        ConceptsView view = view();
        ConceptPanel panel = view.panel(C2).orElseThrow();
        press(panel.cogs(), "ENTER");
        ToothField field = named(view, ToothField.class, "type cogs C-002");
        assertEquals("10-12-14-16-18-21-25-30-35-40-45", field.getText());
        field.setText("10, 12, 12");
        assertEquals("The cog of 12 stands twice. Type each once.", panel.said());
        assertEquals("error", field.getClientProperty("JComponent.outline"));
        press(field, "ENTER");
        assertEquals(List.of(), bench.edits());
        field.setText("10 12–15,18");
        assertEquals("", panel.said());
        press(field, "ENTER");
        assertEquals(List.of(10, 12, 15, 18), cogs(C2));
        assertEquals(1, bench.edits().size());
    }

    @Test
    void leavingWhatIsTypedChangesNothing() {
        ConceptsView view = view();
        ConceptPanel panel = view.panel(C2).orElseThrow();
        press(panel.cogs(), "F2");
        ToothField field = named(view, ToothField.class, "type cogs C-002");
        field.setText("x");
        press(field, "ESCAPE");
        assertEquals("", panel.said());
        assertEquals(List.of(), bench.edits());
    }

    @Test
    void enterOpensTheFigureInWorkingsAndWhatIsMissingLeadsToItsField() {
        ConceptsView view = view();
        ConceptTable table = view.comparison().concepts();
        table.changeSelection(0, 1, false, false);
        press(table, "ENTER");
        assertEquals(Optional.of("gear-range C-002"), bench.selected().map(Object::toString));
        int travel = row(table, "Side travel");
        table.changeSelection(travel, 0, false, false);
        press(table, "F2");
        assertEquals(
                List.of("C-001.cogSpacing_mm"),
                bench.opened().stream().map(Object::toString).toList());
    }

    private static int row(JTable table, String figure) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (((ContentCell.Content) table.getValueAt(row, 0)).name().startsWith(figure)) {
                return row;
            }
        }
        throw new AssertionError("no row of " + figure);
    }

    @Test
    void theFirstColumnsLeadToTheRequirement() {
        JTable asked = (JTable) view().comparison().left();
        asked.changeSelection(0, 0, false, false);
        press(asked, "ENTER");
        assertEquals(List.of(Address.of(Sample.id("R-007"))), bench.opened());
    }

    @Test
    void whatTheLastStepChangedIsSaid() {
        ConceptsView view = view();
        press(view.panel(C2).orElseThrow().rings(), "UP"); // 33 teeth: the range stays, the climb gets harder
        ConceptTable table = view.comparison().concepts();
        assertTrue(name(table, row(table, "Cadence"), 1).startsWith("changed, Cadence on a climb"));
        assertTrue(name(table, row(table, "Cadence"), 2).startsWith("Cadence on a climb"));
        assertTrue(name(table, 0, 1).startsWith("Gear range"));
    }

    private static String name(JTable table, int row, int column) {
        return ((ContentCell.Content) table.getValueAt(row, column)).name();
    }

    @Test
    void anotherConceptLeads() {
        ConceptsView view = view();
        press(named(view, JComponent.class, "lead C-001"), "ENTER");
        assertEquals(Optional.of(C1), bench.definition().project().leadConcept());
        assertEquals(List.of(Optional.empty()), bench.edits());
    }

    @Test
    void allFieldsOfAConceptOpenBelowAndEscapeClosesThem() {
        ConceptsView view = view();
        press(named(view, JComponent.class, "form C-001"), "ENTER");
        assertTrue(view.side().isOpen());
        press(view.side(), "ESCAPE");
        assertFalse(view.side().isOpen());
    }

    @Test
    void anotherWheelIsChosen() {
        ConceptsView view = view();
        JComboBox<?> riders = named(view, JComboBox.class, "riders");
        assertEquals("G-001", riders.getSelectedItem().toString().substring(0, 5));
        riders.setSelectedIndex(2);
        assertTrue(all(view, groupwright.workbench.components.ChartView.class)
                .map(chart -> chart.getAccessibleContext().getAccessibleDescription())
                .anyMatch(said -> said.contains("wheel of G-003") && said.contains("R-003")));
    }

    @Test
    void everythingThatTakesTheFocusHasAName() {
        ConceptsView view = view();
        Shot.of(view, 936, 820, 1);
        List<String> nameless = all(view, JComponent.class)
                .filter(component -> component.isFocusable() && component.isVisible())
                .filter(component -> component instanceof JTable
                        || component.getClass().getName().startsWith("groupwright"))
                .filter(component -> {
                    String name = component.getAccessibleContext().getAccessibleName();
                    return !(component instanceof javax.swing.JPanel) && (name == null || name.isBlank());
                })
                .map(component -> component.getClass().getName())
                .toList();
        assertEquals(List.of(), nameless);
    }

    @ParameterizedTest(name = "{0} at {1}x, {2} wide")
    @CsvSource({"LIGHT, 1, 936", "LIGHT, 2, 936", "DARK, 1, 936", "DARK, 2, 936", "LIGHT, 1, 592", "DARK, 1, 2056"})
    void isPaintedInBothThemesAndAllWidths(Theme theme, int scale, int width) {
        Look.setUp(theme, 1);
        ConceptsView view = view();
        Shot shot = Shot.of(view, width, 1240, scale).keep("concepts-" + theme + "-" + scale + "-" + width);
        assertTrue(shot.area(Token.CONCEPT_2) > 1000, "bars of C-002 " + shot.area(Token.CONCEPT_2));
        if (width < NARROW) {
            return; // bars stand beyond the right end and are scrolled to
        }
        // 25 bars of misses and meets, some cut at 32 long and 6 high; at least a few of each show
        assertTrue(shot.area(Token.MEETS) > 200, "meets " + shot.area(Token.MEETS));
        assertTrue(shot.area(Token.MISSES) > 150, "misses " + shot.area(Token.MISSES));
        assertTrue(shot.area(Token.CHANGED) < 1, "nothing has changed");
        press(view.panel(C2).orElseThrow().rings(), "UP");
        Shot changed = Shot.of(view, width, 1240, scale);
        assertTrue(changed.area(Token.CHANGED) > 300, "changed " + changed.area(Token.CHANGED));
    }

    @Test
    void targetsOfAllRowsStandOnOneUpright() {
        ConceptsView view = view();
        Shot.of(view, 936, 820, 1);
        ConceptTable table = view.comparison().concepts();
        Shot shot = Shot.of(table, table.getWidth(), table.getHeight(), 1);
        int high = table.getRowHeight();
        int figures = table.getRowCount() - 1;
        long uprights = java.util.stream.IntStream.range(0, table.getWidth())
                .filter(x -> java.util.stream.IntStream.rangeClosed(1, figures)
                        .allMatch(row -> like(shot, x, row * high - 1) && like(shot, x, row * high - 2)))
                .count();
        assertEquals(3, uprights, "one in each concept, from row to row, not cut by the lines between");
    }

    private static boolean like(Shot shot, int x, int y) {
        return shot.image().getRGB(x, y) == Token.INK.colour().getRGB();
    }

    @Test
    void twelveConceptsScrollSidewaysAndWhatIsAskedStays() {
        Definition many = Sample.definition();
        for (int i = 0; i < 9; i++) {
            many = Lifecycle.duplicate(many, C2);
        }
        LedgerBench full = new LedgerBench(many, Locale.ENGLISH);
        ConceptsView view = (ConceptsView) full.place().component();
        Shot.of(view, 936, 820, 1).keep("concepts-12");
        ConceptTable table = view.comparison().concepts();
        assertEquals(12, table.getColumnCount());
        assertTrue(table.getWidth() > 936, "wider than the place: " + table.getWidth());
        int left = SwingUtilities.convertPoint(view.comparison().left(), 0, 0, view).x;
        assertEquals(0, left);
        assertEquals(12, table.getColumnModel().getColumnCount());
    }

    @Test
    void withoutConceptsThePlaceSaysWhatToDo() {
        Definition none = Sample.definition();
        for (int i = 0; i < 4; i++) {
            none = none.without(RecordId.of("C", i));
        }
        LedgerBench empty = new LedgerBench(none, Locale.ENGLISH);
        ConceptsView view = (ConceptsView) empty.place().component();
        Shot.of(view, 936, 400, 1).keep("concepts-none");
        assertTrue(all(view).stream()
                .map(component -> component.getAccessibleContext())
                .anyMatch(context -> context != null && "No concepts yet.".equals(context.getAccessibleName())));
    }

    @Test
    void oneConceptOfOneCogCanBeChangedToo() {
        Definition single = Sample.definition();
        for (int i : new int[] {0, 1, 3}) {
            single = single.without(RecordId.of("C", i));
        }
        single = new ToothEdit(C2, ToothRow.COGS, List.of(18)).of(single);
        LedgerBench one = new LedgerBench(single, Locale.ENGLISH);
        ConceptsView view = (ConceptsView) one.place().component();
        Shot.of(view, 936, 700, 1).keep("concepts-single");
        press(view.panel(C2).orElseThrow().cogs(), "INSERT");
        assertEquals(
                List.of(18, 22),
                one.definition().get(C2, Concept.class).orElseThrow().cogs());
    }

    @Test
    void numbersOfAChartStandInATable() {
        ConceptsView view = view();
        all(view, groupwright.workbench.components.ChartView.class)
                .findFirst()
                .orElseThrow()
                .showAsTable();
        JTable numbers = named(view, JTable.class, "numbers");
        assertEquals("C-001", numbers.getValueAt(0, 0));
        assertEquals("36", numbers.getValueAt(0, 1));
        Shot.of(view, 936, 820, 1).keep("concepts-table");
    }

    @Test
    void theFormAndTypingArePainted() {
        ConceptsView view = view();
        press(view.panel(C1).orElseThrow().cogs(), "ENTER");
        named(view, ToothField.class, "type cogs C-001").setText("11-12-14-99-");
        press(named(view, JComponent.class, "form C-002"), "ENTER");
        Shot.of(view, 936, 820, 1).keep("concepts-form");
        assertEquals(
                "A cog of 99 is too large. Cogs have 5 to 80 teeth.",
                view.panel(C1).orElseThrow().said());
    }
}
