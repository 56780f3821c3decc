package groupwright.workbench.claims;

import groupwright.workbench.bench.Bench;
import groupwright.workbench.claims.Rest.InputChange;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.FigureChip;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.SectionHead;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;

/** Makes the sections of a claim in full. */
final class DetailParts {
    /** So many changed inputs are listed; more say no more to a reader. */
    private static final int MOST_INPUTS = 12;

    private final Bench bench;
    private final Words words;

    DetailParts(Bench bench, Words words) {
        this.bench = bench;
        this.words = words;
    }

    private Locale locale() {
        return bench.locale();
    }

    private static JComponent text(CellText text) {
        return new PaintedView<>(CellTextPainter.PLAIN, text);
    }

    private JComponent chip(Chip chip, Rest rest) {
        FigureChip view = new FigureChip(
                chip.line() == Chip.Line.REST ? chip.at(Chip.Line.SHOWN) : chip, () -> bench.select(rest.ask()));
        view.setName("claims.rest." + rest.ask());
        return view;
    }

    /** What it rests on, then and now, and what moved behind that. */
    void rests(Stack into, ClaimDetail detail) {
        into.add(SectionHead.view(words.text("detail.rests")));
        if (detail.rests().isEmpty()) {
            into.add(new Prose(words.text("detail.none"), Type.TABLE, Token.INK));
        }
        detail.rests().forEach(rest -> into.add(rest(rest)));
        if (detail.hasChangedInputs()) {
            into.add(SectionHead.view(words.text("detail.inputs")));
            List<InputChange> changes = detail.rests().stream()
                    .flatMap(rest -> rest.inputs().stream())
                    .distinct()
                    .toList();
            changes.stream().limit(MOST_INPUTS).forEach(change -> into.add(input(change)));
            if (changes.size() > MOST_INPUTS) {
                into.add(new Prose(
                        words.text("detail.more", changes.size() - MOST_INPUTS), Type.SECONDARY, Token.MUTED));
            }
        }
    }

    private JComponent rest(Rest rest) {
        Line line = new Line(Metric.STEP.units() + Metric.HALF_STEP.units());
        line.add(text(CellText.plain(rest.name())));
        line.add(text(CellText.muted(rest.about())));
        Moved moved = ClaimColumns.moved(rest, bench.selected(), words);
        rest.then()
                .ifPresent(then -> line.add(
                        text(CellText.muted(then.text() + " " + moved.sign().text()))));
        line.add(chip(moved.now(), rest));
        if (!rest.limit().isEmpty()) {
            line.add(text(CellText.muted(rest.limit())));
        }
        rest.verdict()
                .ifPresent(verdict -> line.add(
                        new PaintedView<>(new MarkedPainter(Type.TABLE), Marked.of(Mark.of(verdict), locale()))));
        rest.leads().ifPresent(address -> {
            LinkLabel link = new LinkLabel(address.record().text(), () -> bench.open(address));
            link.setName("claims.leads." + rest.ask());
            line.add(link);
        });
        return line;
    }

    private JComponent input(InputChange change) {
        Line line = new Line(Metric.STEP.units());
        LinkLabel link = new LinkLabel(change.label(), () -> bench.open(change.address()));
        link.setName("claims.input." + change.address());
        line.add(link);
        line.add(text(CellText.muted(change.then())));
        line.add(text(CellText.muted("→")));
        line.add(text(CellText.plain(change.now())));
        return line;
    }

    /** A section of sentences; nothing where there are none. */
    void sentences(Stack into, String key, List<String> sentences) {
        List<String> said = sentences.stream().filter(text -> !text.isBlank()).toList();
        if (!said.isEmpty()) {
            into.add(SectionHead.view(words.text(key)));
            said.forEach(text -> into.add(new Prose(text, Type.TABLE, Token.INK)));
        }
    }

    /** The live numbers of a wording, to be asked. */
    Optional<JComponent> numbers(Wording wording) {
        if (wording.numbers().isEmpty()) {
            return Optional.empty();
        }
        Line line = new Line(Metric.GAP.units());
        for (Wording.Number number : wording.numbers()) {
            String name = number.ask().figure().name() + ", " + number.ask().subject() + ", " + number.text();
            Chip chip =
                    Chip.of(number.value().value(), number.value().unit(), name, number.text() + "  " + number.ask());
            boolean selected = bench.selected().equals(Optional.of(number.ask()));
            FigureChip view = new FigureChip(
                    chip.at(selected ? Chip.Line.SELECTED : Chip.Line.SHOWN), () -> bench.select(number.ask()));
            view.setName("claims.number." + number.ask());
            line.add(text(CellText.muted(
                    number.ask().figure().name() + " " + number.ask().subject())));
            line.add(view);
        }
        return Optional.of(line);
    }

    /** Who approved it, when, on which values. */
    void approvals(Stack into, ClaimDetail detail) {
        into.add(SectionHead.view(words.text("detail.approvals")));
        if (detail.approvals().isEmpty()) {
            into.add(new Prose(words.text("signed.none"), Type.TABLE, Token.MUTED));
        }
        for (ClaimDetail.Signed signed : detail.approvals()) {
            into.add(new Prose(words.text("signed", signed.by(), signed.date()), Type.TABLE, Token.INK));
            signed.values().forEach(value -> into.add(new Prose(value, Type.SECONDARY, Token.MUTED)));
        }
    }
}
