package groupwright.workbench.riders;

import groupwright.definition.record.Address;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.ListColumn;
import groupwright.workbench.lists.ListColumn.Room;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The columns of the list of needs. */
final class NeedColumns {
    private final Bench bench;
    private final Words words;

    NeedColumns(Bench bench, Words words) {
        this.bench = bench;
        this.words = words;
    }

    List<ListColumn<NeedRow>> all() {
        return List.of(
                ListColumn.text(
                        words.text("column.id"),
                        56,
                        Room.FIXED,
                        need -> CellText.muted(need.id().text())),
                ListColumn.text(words.text("column.words"), 200, Room.GROWS, NeedColumns::words),
                ListColumn.<NeedRow>text(
                                words.text("column.from"), 88, Room.FIXED, need -> CellText.plain(ids(need.riders())))
                        .from(560),
                ListColumn.<NeedRow>text(
                                words.text("column.source"), 76, Room.FIXED, need -> CellText.plain(need.source()))
                        .from(760),
                ListColumn.text(words.text("column.importance"), 104, Room.FIXED, this::importance),
                ListColumn.<NeedRow>text(
                                words.text("column.date"), 136, Room.FIXED, need -> CellText.muted(need.date()))
                        .from(980),
                ListColumn.<NeedRow>text(
                                words.text("column.against"),
                                88,
                                Room.FIXED,
                                need -> CellText.link(ids(need.against())))
                        .from(860)
                        .leading(need -> first(need.against())),
                ListColumn.<NeedRow, NeedRow>of(
                                words.text("column.answered"),
                                150,
                                NeedRow.class,
                                new AnsweredPainter(words),
                                Optional::of)
                        .leading(need -> first(need.answeredBy())));
    }

    private static CellText words(NeedRow need) {
        return need.isCurrent()
                ? CellText.plain(need.words())
                : CellText.plain(need.words()).struck();
    }

    private CellText importance(NeedRow need) {
        if (!need.isCurrent()) {
            return CellText.muted(need.retired());
        }
        CellText text =
                CellText.plain(words.text("importance." + need.importance().name()));
        return need.importance() == Need.Importance.MUST ? text.strong() : text;
    }

    private static String ids(List<RecordId> ids) {
        return ids.stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    /** The first one; all of them stand as links below the list. */
    private Optional<Runnable> first(List<RecordId> ids) {
        return ids.stream().findFirst().map(id -> () -> bench.open(Address.of(id)));
    }
}
