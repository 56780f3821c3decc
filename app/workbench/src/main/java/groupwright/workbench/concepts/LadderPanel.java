package groupwright.workbench.concepts;

import groupwright.definition.figure.MissingInput;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ChartTable;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.ChartView;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The gear ladder over all concepts, with the choice of the rider group whose wheel and needs it shows. */
final class LadderPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Consumer<ChartTable> tableWanted;
    private final JComboBox<ConceptsSheet.Riders> riders = new JComboBox<>();
    private final JPanel picture = clear(new BorderLayout());
    private final JPanel lacks = clear(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
    private final ActionLink table;
    private final JPanel choice;
    private transient Optional<ChartView> chart = Optional.empty();
    private boolean quiet;

    /** @param chosen told which rider group's wheel is wanted */
    LadderPanel(Bench bench, Words words, Consumer<RecordId> chosen, Consumer<ChartTable> tableWanted) {
        super(new Stack(Metric.HALF_STEP.units()));
        this.bench = bench;
        this.words = words;
        this.tableWanted = tableWanted;
        this.table = new ActionLink(words.text("table.show"), () -> chart.ifPresent(ChartView::showAsTable));
        setOpaque(false);
        table.getAccessibleContext().setAccessibleDescription(words.text("table.name", words.text("ladder.title")));
        riders.setName("riders");
        riders.getAccessibleContext().setAccessibleName(words.text("ladder.riders.name"));
        riders.addActionListener(event -> {
            if (!quiet && riders.getSelectedItem() instanceof ConceptsSheet.Riders group) {
                chosen.accept(group.id());
            }
        });
        this.choice = choice();
        add(picture);
        add(lacks);
    }

    private static JPanel clear(java.awt.LayoutManager layout) {
        JPanel panel = new JPanel(layout);
        panel.setOpaque(false);
        return panel;
    }

    /** Stands above the ladder: whose wheel it shows, and its numbers. */
    private JPanel choice() {
        JLabel wheel = new JLabel(words.text("ladder.riders"));
        wheel.setFont(Type.SECONDARY.font(Weight.REGULAR));
        wheel.setForeground(Token.MUTED.colour());
        wheel.setLabelFor(riders);
        JPanel right = clear(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        right.add(wheel);
        right.add(riders);
        right.add(table);
        return right;
    }

    /** Whose wheel is shown, to be placed above. */
    JPanel above() {
        return choice;
    }

    void show(ConceptsSheet sheet) {
        showRiders(sheet);
        sheet.ladder()
                .ifPresentOrElse(
                        drawn -> chart.ifPresentOrElse(view -> view.show(drawn), () -> {
                            ChartView view = new ChartView(drawn, Token.SURFACE, tableWanted);
                            chart = Optional.of(view);
                            put(view);
                        }),
                        () -> {
                            chart = Optional.empty();
                            String why = sheet.riders().isEmpty() ? "ladder.noRiders" : "ladder.nothing";
                            put(new Prose(words.text(why), Type.TABLE, Token.MUTED));
                        });
        table.setEnabled(chart.isPresent());
        showLacks(sheet.lacks());
        revalidate();
        repaint();
    }

    private void put(javax.swing.JComponent shown) {
        picture.removeAll();
        picture.add(shown);
    }

    private void showRiders(ConceptsSheet sheet) {
        quiet = true;
        if (riders.getItemCount() != sheet.riders().size() || !listed().equals(sheet.riders())) {
            riders.removeAllItems();
            sheet.riders().forEach(riders::addItem);
        }
        sheet.riders().stream()
                .filter(group -> sheet.wheel().equals(Optional.of(group.id())))
                .forEach(riders::setSelectedItem);
        riders.setEnabled(!sheet.riders().isEmpty());
        quiet = false;
    }

    private List<ConceptsSheet.Riders> listed() {
        return java.util.stream.IntStream.range(0, riders.getItemCount())
                .mapToObj(riders::getItemAt)
                .toList();
    }

    private void showLacks(List<MissingInput> missing) {
        lacks.removeAll();
        missing.forEach(input -> lacks.add(new LinkLabel(
                words.text("ladder.lacks", input.address().record(), input.remedy()),
                () -> bench.open(input.address()))));
        lacks.setVisible(!missing.isEmpty());
    }
}
