package groupwright.workbench.requirements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import javax.swing.table.JTableHeader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The place as it is painted, at several widths and scales in both themes. */
class PaintedTest {
    private static Stream<Arguments> pictures() {
        List<Arguments> all = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            for (double scale : new double[] {1, 2}) {
                for (int width : new int[] {800, 1000, 1900}) {
                    all.add(Arguments.of(theme, scale, width));
                }
            }
        }
        return all.stream();
    }

    @ParameterizedTest(name = "{0} {1}x {2}")
    @MethodSource("pictures")
    void numbersAndVerdictsAreNeverCutAndTargetsStandOnOneLine(Theme theme, double scale, int width) throws Exception {
        Painted painted = Painted.of(Sample.definition(), theme, scale);
        SwingUtilities.invokeAndWait(() -> painted.place.reveal(Address.of(Sample.id("R-005"))));
        BufferedImage image = painted.at(width, 900);
        RequirementsTable table = painted.view.rows().table();
        for (int row = 0; row < table.getRowCount(); row++) {
            for (Column column : List.of(Column.ID, Column.TARGET, Column.VALUE, Column.MARGIN, Column.VERDICT)) {
                Cell cell = (Cell) table.getValueAt(row, column.ordinal());
                double room =
                        table.getColumnModel().getColumn(column.ordinal()).getWidth() / scale - 2 * column.padding();
                assertTrue(
                        cell.extent().width() <= room + 1,
                        cell.name() + " wants " + cell.extent().width() + " of " + room);
            }
        }
        assertEquals(table.getParent().getWidth(), table.getWidth(), "no scrolling sideways");
        upright(painted, image, table);
        washAndLine(painted, image, table);
        head(painted, table);
    }

    /** In the middle between two rows there is nothing but the upright. */
    private static void upright(Painted painted, BufferedImage image, RequirementsTable table) {
        int row = table.rowAtPoint(new Point(1, table.getVisibleRect().y)) + 2;
        Rectangle cell = table.getCellRect(row, Column.BAR.ordinal(), true);
        Rectangle there = SwingUtilities.convertRectangle(table, cell, painted.view);
        int ink = Token.INK.colour().getRGB();
        int middle = there.x + there.width / 2;
        boolean found = false;
        for (int x = middle - 3; x <= middle + 3; x++) {
            found |= image.getRGB(x, there.y + there.height - 1) == ink && image.getRGB(x, there.y + 1) == ink;
        }
        assertTrue(found, "the upright runs through the rule below row " + row);
    }

    private static void washAndLine(Painted painted, BufferedImage image, RequirementsTable table) {
        Rectangle cell = table.getCellRect(table.getSelectedRow(), Column.TITLE.ordinal(), false);
        Rectangle there = SwingUtilities.convertRectangle(table, cell, painted.view);
        assertEquals(
                Token.ACCENT.colour().getRGB(),
                image.getRGB(there.x + there.width / 2, there.y + there.height - 1),
                "the selected row has the accent line at its lower edge");
    }

    private static void head(Painted painted, RequirementsTable table) {
        JTableHeader header = table.getTableHeader();
        assertTrue(header.getHeight() >= Look.pixels(24), "the head is there: " + header.getHeight());
        assertEquals(
                "C-002",
                ((TableHead.Title) table.getColumnModel()
                                .getColumn(Column.VALUE.ordinal())
                                .getHeaderValue())
                        .word());
    }

    @Test
    void whatIsCutHasATip() throws Exception {
        Painted painted = Painted.of(Sample.definition(), Theme.LIGHT, 1);
        painted.at(800, 900);
        RequirementsTable table = painted.view.rows().table();
        int cut = 0;
        for (int row = 0; row < table.getRowCount(); row++) {
            Cell cell = (Cell) table.getValueAt(row, Column.TITLE.ordinal());
            int room = table.getColumnModel().getColumn(Column.TITLE.ordinal()).getWidth() - 16;
            if (cell.extent().width() > room) {
                cut++;
                Rectangle at = table.getCellRect(row, Column.TITLE.ordinal(), false);
                String tip = table.getToolTipText(new java.awt.event.MouseEvent(
                        table, 0, 0, 0, (int) at.getCenterX(), (int) at.getCenterY(), 0, false));
                assertTrue(tip.contains(painted.view.lines().get(row).listed().title()), tip);
            }
        }
        assertTrue(cut > 0, "at 800 some titles are cut");
    }

    @Test
    void eachRowSaysItsVerdictInWords() throws Exception {
        Painted painted = Painted.of(Sample.definition(), Theme.LIGHT, 1);
        RequirementsTable table = painted.view.rows().table();
        assertEquals(
                "R-005 No step that breaks the rhythm. Largest step 14 t up, at most 18\u202F%: 20.0\u202F%, misses",
                ((Cell) table.getValueAt(4, Column.TITLE.ordinal())).name());
    }

    @Test
    void anEmptyProjectSaysWhatToDo() throws Exception {
        Painted painted = Painted.of(Definition.of(Sample.definition().project()), Theme.LIGHT, 1);
        painted.at(1000, 600);
        assertTrue(Painted.named(painted.view, "No requirements yet.").isPresent());
    }

    @Test
    void aFilterThatHidesAllSaysSo() throws Exception {
        Painted painted = Painted.of(Sample.definition(), Theme.LIGHT, 1);
        SwingUtilities.invokeAndWait(() -> painted.view.filters().facets().choose(5));
        painted.at(1000, 600);
        assertTrue(
                Painted.named(painted.view, "The last step changed none of 49.").isPresent());
    }
}
