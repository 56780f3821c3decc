package groupwright.workbench.components;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.ChartTable;
import groupwright.documents.charts.ConceptSign;
import groupwright.workbench.look.Contrast;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What people can do with the components, without a window. */
class ActingTest {
    private final AtomicInteger done = new AtomicInteger();

    @BeforeEach
    void look() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
    }

    private static void press(JComponent component, String key) {
        Object name = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        component
                .getActionMap()
                .get(name)
                .actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, key));
    }

    private static void mouse(Component component, int kind) {
        component.dispatchEvent(new MouseEvent(component, kind, 0, 0, 5, 5, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void clickEnterAndSpaceAllDoIt() {
        ConceptTag other = ComponentGallery.concept(1, ConceptSign.Standing.OTHER);
        for (JComponent component : List.of(
                new FigureChip(ComponentGallery.chip(), done::incrementAndGet),
                new LinkLabel("N-003", done::incrementAndGet),
                new ActionLink("Undo", done::incrementAndGet),
                new ConceptChooserButton(other, done::incrementAndGet))) {
            done.set(0);
            mouse(component, MouseEvent.MOUSE_CLICKED);
            press(component, "ENTER");
            press(component, "SPACE");
            assertEquals(3, done.get(), component.getClass().getSimpleName());
        }
    }

    @Test
    void whatIsDisabledDoesNothing() {
        ActionLink undo = new ActionLink("Undo", done::incrementAndGet);
        undo.setEnabled(false);
        mouse(undo, MouseEvent.MOUSE_CLICKED);
        press(undo, "ENTER");
        assertEquals(0, done.get());
        assertFalse(undo.isFocusable());
    }

    @Test
    void theLeadIsNotChosenAgain() {
        ConceptChooserButton lead =
                new ConceptChooserButton(ComponentGallery.concept(2, ConceptSign.Standing.LEAD), done::incrementAndGet);
        press(lead, "ENTER");
        assertEquals(0, done.get());
        assertTrue(lead.getAccessibleContext().getAccessibleStateSet().contains(AccessibleState.CHECKED));
        assertEquals("C-002, 1 × 12, lead concept", lead.getAccessibleContext().getAccessibleName());
    }

    @Test
    void aChipCopiesValueUnitAndFigure() throws Exception {
        FigureChip chip = new FigureChip(ComponentGallery.chip(), () -> {});
        Clipboard clipboard = new Clipboard("test");
        chip.getTransferHandler().exportToClipboard(chip, clipboard, TransferHandler.COPY);
        assertEquals("20.0 %  largest-step C-002", clipboard.getData(DataFlavor.stringFlavor));
        assertEquals("copy", chip.getInputMap().get(KeyStroke.getKeyStroke("ctrl C")));
        assertEquals(AccessibleRole.HYPERLINK, chip.getAccessibleContext().getAccessibleRole());
        assertEquals(
                "Largest step, C-002, 20.0 percent, misses",
                chip.getAccessibleContext().getAccessibleName());
    }

    @Test
    void thePointerOverAChipTurnsItsLineAccent() {
        FigureChip chip = new FigureChip(ComponentGallery.chip().at(Chip.Line.SHOWN), () -> {});
        assertEquals(0, Shot.of(chip, Token.SURFACE).area(Token.ACCENT));
        mouse(chip, MouseEvent.MOUSE_ENTERED);
        assertTrue(Shot.of(chip, Token.SURFACE).area(Token.ACCENT) > 40);
        mouse(chip, MouseEvent.MOUSE_EXITED);
        assertEquals(0, Shot.of(chip, Token.SURFACE).area(Token.ACCENT));
    }

    @Test
    void theTipOfAMissingValueSaysWhatToFill() {
        Chip missing = Chip.missing("missing", "Chain angle, missing input", "", "B-004: fill chainstay_mm");
        FigureChip chip = new FigureChip(missing, () -> {});
        MouseEvent over = new MouseEvent(chip, MouseEvent.MOUSE_MOVED, 0, 0, 1, 1, 0, false);
        assertEquals("B-004: fill chainstay_mm", chip.getToolTipText(over));
    }

    @Test
    void theRingIsPaintedAroundWhatHasTheFocus() {
        LinkLabel focused = new LinkLabel("N-003", () -> {}) {
            @Override
            public boolean isFocusOwner() {
                return true;
            }
        };
        Shot shot = Shot.of(focused, Token.SURFACE);
        assertEquals(Token.ACCENT.colour(), shot.at(1, 1));
        assertEquals(Token.SURFACE.colour(), shot.at(2.5, 2.5));
        assertEquals(
                Token.SURFACE.colour(),
                Shot.of(new LinkLabel("N-003", () -> {}), Token.SURFACE).at(1, 1));
    }

    @Test
    void arrowKeysGoThroughFacets() {
        List<Integer> chosen = new ArrayList<>();
        Facets facets = new Facets(ComponentGallery.someFacets(), 0, chosen::add);
        press((JComponent) facets.getComponent(0), "LEFT");
        press((JComponent) facets.getComponent(0), "RIGHT");
        press((JComponent) facets.getComponent(1), "END");
        press((JComponent) facets.getComponent(3), "LEFT");
        mouse(facets.getComponent(1), MouseEvent.MOUSE_CLICKED);
        assertEquals(List.of(1, 3, 2, 1), chosen);
        assertEquals(AccessibleRole.PAGE_TAB_LIST, facets.getAccessibleContext().getAccessibleRole());
        for (int i = 0; i < facets.getComponentCount(); i++) {
            Component tab = facets.getComponent(i);
            assertEquals(i == 1, tab.isFocusable(), "only the active one is a stop");
            assertEquals(
                    i == 1, tab.getAccessibleContext().getAccessibleStateSet().contains(AccessibleState.SELECTED));
        }
        assertEquals("Misses, 9", facets.getComponent(1).getAccessibleContext().getAccessibleName());
    }

    @Test
    void aChartGivesItsTableAndItsPicture() throws Exception {
        List<ChartTable> tables = new ArrayList<>();
        ChartView view = new ChartView(ComponentGallery.stepBars(), Token.SURFACE, tables::add);
        view.setSize(view.getPreferredSize());
        press(view, "ENTER");
        assertEquals(List.of(ComponentGallery.stepBars().table()), tables);
        assertEquals(
                ComponentGallery.stepBars().description(),
                view.getAccessibleContext().getAccessibleDescription());
        Clipboard clipboard = new Clipboard("test");
        view.getTransferHandler().exportToClipboard(view, clipboard, TransferHandler.COPY);
        BufferedImage picture = ImageIO.read((InputStream) clipboard.getData(PictureTransfer.PNG));
        assertEquals(2 * (view.getHeight() - 6), picture.getHeight(), 2);
    }

    @Test
    void aSelectedRowKeepsItsAccentLineWhenTheFocusIsElsewhere() {
        PaintedCell<Bar> cell = new PaintedCell<>(Bar.class, CriterionBar.IN_ROW, 0);
        JTable table = new JTable(1, 1);
        Bar bar = ComponentGallery.bar(0.05, groupwright.documents.content.Verdict.MEETS, 0);
        Component painted = cell.getTableCellRendererComponent(table, bar, true, false, 0, 0);
        painted.setSize(100, 28);
        Shot shot = Shot.of(painted, Token.RAISED, 1);
        assertEquals(Token.IDLE_SELECTION.colour(), shot.at(5, 3));
        assertEquals(Token.ACCENT.colour(), shot.at(5, 27));
        assertTrue(shot.area(Token.MEETS) > 50);
        assertEquals("MEETS", painted.getAccessibleContext().getAccessibleName());
        Component empty = cell.getTableCellRendererComponent(table, "other", false, false, 0, 0);
        assertEquals(0, Shot.of(empty, Token.RAISED, 1).area(Token.MEETS));
    }

    @Test
    void everythingInTheGalleryHasANameAndWhatActsHasARingAndAKey() {
        List<JComponent> own = all(ComponentGallery.build())
                .filter(c -> c.getClass().getPackage() == PaintedView.class.getPackage())
                .filter(c -> c instanceof PaintedView || c instanceof ChartView || c instanceof ProblemEntry)
                .map(JComponent.class::cast)
                .toList();
        assertTrue(own.size() > 60, "found " + own.size());
        for (JComponent component : own) {
            String kind = component.getClass().getSimpleName();
            assertFalse(component.getAccessibleContext().getAccessibleName().isBlank(), kind);
            boolean acts = component.getActionMap().get(Press.ACTION) != null;
            if (acts) {
                assertTrue(component.getInsets().top >= 3, kind + " leaves room for its ring");
                assertTrue(component.getPreferredSize().height >= 24, kind + " can be hit");
            }
        }
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> below = component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(ActingTest::all)
                : Stream.empty();
        return Stream.concat(Stream.of(component), below);
    }
}
