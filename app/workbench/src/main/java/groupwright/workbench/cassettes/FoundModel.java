package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.Judged;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.workbench.components.Mark;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Weight;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;

/** Maps cassettes to cells. */
final class FoundModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    static final int LETTER = 0;
    static final int COGS = 1;
    static final int FIRST_MEASURE = 2;
    static final int FIRST_RIDERS = FIRST_MEASURE + Measure.values().length;

    private final transient CassetteWords say;
    private transient List<RecordId> riders = List.of();
    private transient List<Candidate> rows = List.of();
    private transient Optional<Shown> shown = Optional.empty();

    FoundModel(CassetteWords say) {
        this.say = say;
    }

    void riders(List<RecordId> next) {
        riders = List.copyOf(next);
        fireTableStructureChanged();
    }

    void show(Shown next) {
        shown = Optional.of(next);
        rows = next.rows();
        fireTableDataChanged();
    }

    Candidate row(int index) {
        return rows.get(index);
    }

    List<Candidate> rows() {
        return rows;
    }

    Optional<Shown> shown() {
        return shown;
    }

    /** The measure of a column; nothing for letters, cogs and rider groups. */
    static Optional<Measure> measure(int column) {
        return column >= FIRST_MEASURE && column < FIRST_RIDERS
                ? Optional.of(Measure.values()[column - FIRST_MEASURE])
                : Optional.empty();
    }

    @Override
    public int getRowCount() {
        return rows == null ? 0 : rows.size(); // Swing asks before construction is done
    }

    @Override
    public int getColumnCount() {
        return FIRST_RIDERS + (riders == null ? 0 : riders.size());
    }

    @Override
    public String getColumnName(int column) {
        if (column == LETTER) {
            return "";
        } else if (column == COGS) {
            return say.words().text("head.cogs");
        }
        return measure(column)
                .map(say::head)
                .orElseGet(() -> riders.get(column - FIRST_RIDERS).text());
    }

    @Override
    public Object getValueAt(int row, int column) {
        Candidate candidate = rows.get(row);
        Weight weight = shown.flatMap(Shown::selected)
                        .filter(candidate.cassette()::equals)
                        .isPresent()
                ? Weight.STRONG
                : Weight.REGULAR;
        if (column == LETTER) {
            String letter = shown.map(now -> now.letter(candidate.cassette())).orElse("");
            return new CellText(letter, Weight.STRONG, Token.ACCENT, CellText.Line.NONE);
        } else if (column == COGS) {
            return new CellText(candidate.cogs(), weight, Token.INK, CellText.Line.NONE);
        }
        return measure(column)
                .<Object>map(measure ->
                        new Amounts.Amount(say.number(measure, measure.of(candidate)), measure.unit(), weight))
                .orElseGet(() -> forRiders(candidate, riders.get(column - FIRST_RIDERS)));
    }

    private ForRiders forRiders(Candidate candidate, RecordId id) {
        if (candidate.judged().isEmpty()) {
            return new ForRiders(Optional.empty(), say.words().text("verdict.none", id));
        }
        Judged judged = candidate.judged().get();
        Optional<Verdict> verdict = judged.forRiders(id);
        String word = verdict.map(one -> Mark.of(one).word(say.locale())).orElse("");
        String missed = judged.missed().stream()
                .filter(held -> held.criterion().requirement().riders().contains(id))
                .map(held -> held.criterion().requirement().id().text())
                .distinct()
                .collect(Collectors.joining(", "));
        String words = verdict.isEmpty()
                ? say.words().text("verdict.nothing", id)
                : say.words().text(missed.isEmpty() ? "verdict" : "verdict.missed", id, word, missed);
        return new ForRiders(verdict.map(Mark::of), words);
    }
}
