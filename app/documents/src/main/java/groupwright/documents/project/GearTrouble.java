package groupwright.documents.project;

import groupwright.definition.record.Bike;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why a gear does not close, in words.
 *
 * @param rest chain left over with the suspension at rest
 * @param full the same at full travel, where there is travel
 * @param gaps distance of guide pulley and cog at rest
 */
record GearTrouble(Sheet sheet, GearSeries rest, Optional<Full> full, GearSeries gaps) {
    /** At full travel. */
    record Full(GearSeries leftOver, GearSeries gaps) {}

    static GearTrouble of(Sheet sheet, RecordId concept, Bike bike, GearSeries gaps) {
        String subject = " " + concept + " " + bike.id();
        String full = subject + " suspension=full";
        return new GearTrouble(
                sheet,
                GearSeries.of(sheet, "chain-left-overs" + subject),
                bike.chainGrowth_mm().value() > 0
                        ? Optional.of(new Full(
                                GearSeries.of(sheet, "chain-left-overs" + full),
                                GearSeries.of(sheet, "pulley-gaps" + full)))
                        : Optional.empty(),
                gaps);
    }

    /** Nothing where it closes at both ends of the travel. */
    List<Inline> of(String gear) {
        List<Inline> parts = new ArrayList<>(of(gear, rest, gaps));
        List<Inline> more =
                full.map(end -> of(gear, end.leftOver(), end.gaps())).orElse(List.of());
        if (!more.isEmpty()) {
            String lead = parts.isEmpty() ? "" : sheet.labels().text("list.separator");
            parts.add(new Inline.Plain(lead + sheet.labels().text("gearPaths.full") + " "));
            parts.addAll(more);
        }
        return parts;
    }

    private List<Inline> of(String gear, GearSeries leftOver, GearSeries gap) {
        Double over = leftOver.values().get(gear);
        if (over == null) {
            String key = gap.values().containsKey(gear) ? "gearPaths.onCog" : "gearPaths.noWay";
            return List.of(new Inline.Plain(sheet.labels().text(key)));
        } else if (over == 0) {
            return List.of();
        }
        String key = over > 0 ? "gearPaths.slack" : "gearPaths.tight";
        return List.of(new Inline.Plain(sheet.labels().text(key) + " "), leftOver.size(gear));
    }
}
