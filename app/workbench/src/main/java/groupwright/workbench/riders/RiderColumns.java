package groupwright.workbench.riders;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.riders.RidersSheet.Cell;
import groupwright.workbench.riders.RidersSheet.Group;
import groupwright.workbench.riders.RidersSheet.Kind;
import groupwright.workbench.riders.RidersSheet.Rank;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Rider groups as columns on shared rows; values are edited where they stand. */
final class RiderColumns extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final double AXIS_FIRST = 40;
    private static final double AXIS_LAST = 110;

    private final transient Words words;
    private final transient ValueCell.Commit commit;
    private final transient Consumer<Address> open;
    private final SharedRows rows = new SharedRows();
    private final transient Map<Address, ValueCell> cells = new HashMap<>();
    private transient RidersSheet sheet = RidersSheet.NOTHING;
    private transient Rank rank = Rank.MAIN;
    private transient List<String> outline = List.of();

    /** @param open opens the form of a group at a field */
    RiderColumns(Words words, ValueCell.Commit commit, Consumer<Address> open) {
        super(new java.awt.BorderLayout());
        this.words = words;
        this.commit = commit;
        this.open = open;
        setOpaque(false);
        setName("riders.columns");
        add(rows);
    }

    /** Shows other values; components are made anew only where groups or rows are others. */
    void show(RidersSheet next, Rank least, Function<Cell, String> was) {
        sheet = next;
        rank = least;
        List<String> now = outline(next);
        if (!now.equals(outline)) {
            outline = now;
            build();
        }
        for (RidersSheet.Line line : next.lines()) {
            for (Cell cell : line.cells()) {
                Optional.ofNullable(cells.get(cell.at())).ifPresent(own -> own.show(cell, was.apply(cell)));
            }
        }
        rows.revalidate();
        rows.repaint();
    }

    /** What asks for other components: groups, what is drawn of them, and which rows are shown. */
    private List<String> outline(RidersSheet next) {
        List<String> parts = new ArrayList<>(List.of(rank.name()));
        next.groups().forEach(group -> parts.add(group.toString()));
        next.lines().stream()
                .filter(line -> line.kind() == Kind.IN_FORM)
                .forEach(line -> line.cells().forEach(cell -> parts.add(cell.shown())));
        return parts;
    }

    private void build() {
        Map<Address, String> typed = new HashMap<>();
        Optional<Address> focus = Optional.empty();
        for (ValueCell cell : cells.values()) {
            if (!cell.field().getText().equals(cell.cell().shown())) {
                typed.put(cell.cell().at(), cell.field().getText());
            }
            if (cell.field().isFocusOwner()) {
                focus = Optional.of(cell.cell().at());
            }
        }
        cells.clear();
        rows.clear();
        if (!sheet.groups().isEmpty()) {
            rows.add(new JPanel(null), sheet.groups().stream().map(this::head).toList(), SharedRows.Rule.STRONG);
            sheet.lines().stream().filter(this::isShown).forEach(this::line);
            drawings();
        }
        typed.forEach((at, text) -> field(at).ifPresent(field -> field.setText(text)));
        focus.flatMap(this::field).ifPresent(ValueField::requestFocusInWindow);
    }

    private boolean isShown(RidersSheet.Line line) {
        return line.rank() == Rank.MAIN || rank == Rank.FURTHER;
    }

    private JComponent head(Group group) {
        groupwright.workbench.lists.Stack head = new groupwright.workbench.lists.Stack(0);
        head.add(new Prose(group.title(), Type.HEADING, Weight.STRONG, Token.INK));
        LinkLabel link = new LinkLabel(group.id().text(), Type.SECONDARY, () -> open.accept(Address.of(group.id())));
        link.setName("riders.open." + group.id());
        head.add(new Line(Metric.HALF_STEP.units(), link, text(words.text("group.counts", group.importance()))));
        return head;
    }

    private static JComponent text(String text) {
        return new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(text));
    }

    private static JComponent label(String text) {
        return new PaintedView<>(CellTextPainter.PLAIN, CellText.plain(text));
    }

    private void line(RidersSheet.Line line) {
        List<JComponent> made = new ArrayList<>();
        for (Cell cell : line.cells()) {
            made.add(line.kind() == Kind.IN_FORM ? inForm(cell) : cell(line.kind(), cell));
        }
        rows.add(label(line.label()), made, SharedRows.Rule.HAIRLINE);
    }

    private JComponent inForm(Cell cell) {
        String shown = cell.shown().isEmpty() ? words.text("not.given") : cell.shown();
        LinkLabel link = new LinkLabel(shown, () -> open.accept(cell.at()));
        link.setName("riders." + cell.at());
        return link;
    }

    private JComponent cell(Kind kind, Cell cell) {
        ValueCell own = new ValueCell(kind, cell, words.locale(), commit);
        cells.put(cell.at(), own);
        own.field().neighbours(() -> walk(cell.at(), -1), () -> walk(cell.at(), 1));
        return own;
    }

    /** To the value above or below of the same group. */
    private void walk(Address from, int step) {
        List<Address> column = sheet.lines().stream()
                .filter(this::isShown)
                .flatMap(line -> line.cells().stream())
                .map(Cell::at)
                .filter(at -> at.record().equals(from.record()) && cells.containsKey(at))
                .toList();
        int to = column.indexOf(from) + step;
        if (to >= 0 && to < column.size()) {
            field(column.get(to)).ifPresent(ValueField::requestFocusInWindow);
        }
    }

    private void drawings() {
        double least = AXIS_FIRST;
        double last = AXIS_LAST;
        double most = 0;
        for (Group group : sheet.groups()) {
            least = Math.min(
                    least, group.cadence().map(RidersSheet.Cadence::least).orElse(least));
            last = Math.max(last, group.cadence().map(RidersSheet.Cadence::most).orElse(last));
            most = Math.max(
                    most,
                    group.terrain().stream()
                            .mapToDouble(RidersSheet.Terrain::share)
                            .max()
                            .orElse(0));
        }
        CadencePainter cadence = new CadencePainter(words, least, last);
        TerrainPainter terrain = new TerrainPainter(words, most);
        rows.add(
                explained("cadence"),
                sheet.groups().stream()
                        .map(group -> (JComponent) new PaintedView<>(cadence, group))
                        .toList(),
                SharedRows.Rule.HAIRLINE);
        rows.add(
                explained("terrain"),
                sheet.groups().stream()
                        .map(group -> (JComponent) new PaintedView<>(terrain, group))
                        .toList(),
                SharedRows.Rule.NONE);
    }

    private JComponent explained(String key) {
        groupwright.workbench.lists.Stack stack = new groupwright.workbench.lists.Stack(0);
        stack.setBorder(javax.swing.BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, 0, Look.pixels(2)));
        stack.add(label(words.text("line." + key)));
        stack.add(new Prose(words.text("line." + key + ".help"), Type.CAPTION, Token.MUTED));
        return stack;
    }

    Optional<ValueField> field(Address at) {
        return Optional.ofNullable(cells.get(at)).map(ValueCell::field);
    }

    /** The cell at an address; nothing where it is not shown. */
    Optional<ValueCell> cell(Address at) {
        return Optional.ofNullable(cells.get(at));
    }

    /** Whether a group has a column. */
    boolean has(RecordId group) {
        return sheet.groups().stream().anyMatch(one -> one.id().equals(group));
    }
}
