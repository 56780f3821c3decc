package groupwright.workbench.claims;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.Evidence;
import groupwright.workbench.components.EvidencePins;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.ListColumn;
import groupwright.workbench.lists.ListColumn.Room;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;

/** The columns of the list of claims. */
final class ClaimColumns {
    private final Bench bench;
    private final Words words;

    ClaimColumns(Bench bench, Words words) {
        this.bench = bench;
        this.words = words;
    }

    List<ListColumn<ClaimRow>> all() {
        return List.of(
                ListColumn.text(
                        words.text("column.id"),
                        56,
                        Room.FIXED,
                        row -> CellText.muted(row.id().text())),
                ListColumn.text(words.text("column.wording"), 140, Room.GROWS, ClaimColumns::wording),
                ListColumn.<ClaimRow>text(
                                words.text("column.where"), 92, Room.FIXED, row -> CellText.muted(row.channel()))
                        .from(820),
                ListColumn.<ClaimRow, Moved>of(
                                words.text("column.rests"),
                                156,
                                Moved.class,
                                MovedPainter.PLAIN,
                                row -> row.first().map(this::moved))
                        .leading(row -> row.first().map(rest -> () -> bench.select(rest.ask()))),
                ListColumn.<ClaimRow>text(words.text("column.leads"), 70, Room.FIXED, row -> CellText.link(leads(row)))
                        .from(700)
                        .leading(row -> row.leads().map(address -> () -> bench.open(address))),
                ListColumn.<ClaimRow, Evidence>of(
                                words.text("column.pins"),
                                76,
                                Evidence.class,
                                new EvidencePins(Token.RAISED),
                                ClaimRow::evidence)
                        .from(560),
                ListColumn.text(words.text("column.open"), 120, Room.GROWS, ClaimColumns::open));
    }

    private static CellText wording(ClaimRow row) {
        CellText text = CellText.plain(row.wording().quoted());
        return row.evidence().isEmpty() ? text.struck() : text;
    }

    private static CellText open(ClaimRow row) {
        return row.evidence().isEmpty() ? CellText.muted(row.open()) : CellText.plain(row.open());
    }

    private static String leads(ClaimRow row) {
        return row.leads().map(Address::record).map(Object::toString).orElse("");
    }

    private Moved moved(Rest rest) {
        return moved(rest, bench.selected(), words);
    }

    /** A rest as then and now; the number that Workings shows carries its line. */
    static Moved moved(Rest rest, Optional<Ask> selected, Words words) {
        return new Moved(rest.then().map(then -> then.value()), sign(rest), chip(rest, selected, words));
    }

    private static Moved.Sign sign(Rest rest) {
        if (rest.then().isEmpty()) {
            return Moved.Sign.NONE;
        }
        return rest.hasMoved() ? Moved.Sign.MOVED : Moved.Sign.SAME;
    }

    static Chip chip(Rest rest, Optional<Ask> selected, Words words) {
        String value = rest.now().text();
        String verdict = rest.verdict().map(one -> ", " + one.words()).orElse("");
        String name = rest.name() + ", " + rest.about() + ", " + value + (rest.kind() == Rest.Kind.WORD ? "" : verdict);
        String copy = value + "  " + rest.ask();
        Chip chip = rest.kind() == Rest.Kind.MISSING
                ? Chip.missing(words.text("missing"), name, copy, rest.tip())
                : Chip.of(rest.now().value(), rest.now().unit(), name, copy);
        Chip shown = rest.hasMoved() ? chip.changed() : chip;
        return selected.equals(Optional.of(rest.ask())) ? shown.at(Chip.Line.SELECTED) : shown;
    }
}
