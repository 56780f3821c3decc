package groupwright.workbench.riders;

import groupwright.definition.ledger.View;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import groupwright.workbench.riders.RidersSheet.Cadence;
import groupwright.workbench.riders.RidersSheet.Group;
import groupwright.workbench.riders.RidersSheet.Retired;
import groupwright.workbench.riders.RidersSheet.Slope;
import groupwright.workbench.riders.RidersSheet.Terrain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads rider groups and needs. O(fields of the groups + needs + requirements). */
final class RidersReading {
    private static final double ENDLESS = 25; // nobody names where the steepest ground ends

    private final View view;
    private final Words words;
    private final Reader reader;

    RidersReading(View view, Locale locale) {
        this.view = view;
        this.words = Words.of(RidersReading.class, locale);
        this.reader = new Reader(locale);
    }

    RidersSheet sheet() {
        Definition definition = view.definition();
        List<RiderGroup> all = definition.all(RecordKinds.RIDER_GROUP);
        List<RiderGroup> current = all.stream().filter(RiderGroup::isCurrent).toList();
        return new RidersSheet(
                groups(current),
                new LineReading(view, words).lines(current),
                all.stream()
                        .filter(group -> !group.isCurrent())
                        .map(group -> new Retired(group.id(), group.title(), group.retired()))
                        .toList(),
                new NeedReading(definition, words).needs());
    }

    private List<Group> groups(List<RiderGroup> current) {
        List<Integer> shares =
                shares(current.stream().map(RiderGroup::importance).toList());
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < current.size(); i++) {
            RiderGroup group = current.get(i);
            groups.add(new Group(
                    group.id(), group.title(), group.importance(), shares.get(i), cadence(group), terrain(group)));
        }
        return groups;
    }

    /** Whole percents that add up to 100: rounded down, and the largest remainders up. */
    static List<Integer> shares(List<Integer> importances) {
        int sum = importances.stream().mapToInt(Integer::intValue).sum();
        List<Integer> shares = new ArrayList<>(
                importances.stream().map(importance -> 100 * importance / sum).toList());
        int left = 100 - shares.stream().mapToInt(Integer::intValue).sum();
        IntStream.range(0, importances.size())
                .boxed()
                .sorted(Comparator.comparing(i -> -(100 * importances.get(i) % sum)))
                .limit(importances.isEmpty() ? 0 : left)
                .forEach(i -> shares.set(i, shares.get(i) + 1));
        return shares;
    }

    private static Optional<Cadence> cadence(RiderGroup group) {
        if (group.cadenceLeast_rpm().isEmpty()
                || group.cadencePreferredLow_rpm().isEmpty()
                || group.cadencePreferredHigh_rpm().isEmpty()
                || group.cadenceMost_rpm().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Cadence(
                group.cadenceLeast_rpm().get().value(),
                group.cadencePreferredLow_rpm().get().value(),
                group.cadencePreferredHigh_rpm().get().value(),
                group.cadenceMost_rpm().get().value()));
    }

    private List<Terrain> terrain(RiderGroup group) {
        return group.terrain().stream()
                .map(band -> new Terrain(
                        grade(band.from_pct().value(), band.to_pct().value()),
                        band.share_pct().value(),
                        band.to_pct().value() <= 0 ? Slope.DOWN : Slope.FLAT_OR_UP))
                .toList();
    }

    private String grade(double from, double to) {
        if (to <= 0) {
            return words.text("terrain.down");
        } else if (from <= 0) {
            return words.text("terrain.flat");
        }
        return to >= ENDLESS ? reader.exact(from) + " +" : reader.exact(from) + "–" + reader.exact(to);
    }
}
