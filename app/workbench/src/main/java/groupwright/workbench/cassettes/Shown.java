package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Found;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What was found and what of it is looked at; scatter, table and detail all show this.
 *
 * @param riders the groups for which nothing may be missed
 * @param pinned cassettes kept on top, in the order of their letters
 */
record Shown(
        Finding finding,
        Set<RecordId> riders,
        Filter filter,
        TradeOff axes,
        Sorting sorting,
        Optional<Cassette> selected,
        List<Cassette> pinned) {
    /** Which cassettes are listed. */
    enum Filter {
        SUITING,
        ALL
    }

    Shown {
        riders = Set.copyOf(riders);
        pinned = List.copyOf(pinned);
    }

    /** At first the best compromise is not known, so nothing is selected but what stands first. */
    static Shown first(Finding finding, Set<RecordId> riders) {
        Shown all = new Shown(
                finding,
                riders,
                finding.suiting(riders).isEmpty() ? Filter.ALL : Filter.SUITING,
                new TradeOff(Measure.WEIGHT, Measure.UNEVENNESS),
                Sorting.by(Measure.UNEVENNESS),
                Optional.empty(),
                List.of());
        return all.select(all.rows().stream().findFirst().map(Candidate::cassette));
    }

    /** The same view of another finding; what is gone is selected and pinned no longer. */
    Shown with(Finding other) {
        Set<Cassette> there = new LinkedHashSet<>();
        other.shown().forEach(candidate -> there.add(candidate.cassette()));
        there.add(other.today().cassette());
        return new Shown(
                other,
                riders,
                filter(other),
                axes,
                sorting,
                selected.filter(there::contains),
                pinned.stream().filter(there::contains).toList());
    }

    /** With the first verdicts those that suit are listed; later the user's choice stays, while it lists anything. */
    private Filter filter(Finding other) {
        boolean none = other.suiting(riders).isEmpty();
        if (none || !finding.isJudged()) {
            return none ? Filter.ALL : Filter.SUITING;
        }
        return filter;
    }

    Shown riders(Set<RecordId> other) {
        return new Shown(finding, other, filter, axes, sorting, selected, pinned);
    }

    Shown filter(Filter other) {
        return new Shown(finding, riders, other, axes, sorting, selected, pinned);
    }

    Shown axes(TradeOff other) {
        return new Shown(finding, riders, filter, other, sorting, selected, pinned);
    }

    Shown sorting(Sorting other) {
        return new Shown(finding, riders, filter, axes, other, selected, pinned);
    }

    Shown select(Optional<Cassette> other) {
        return new Shown(finding, riders, filter, axes, sorting, other, pinned);
    }

    /** Pins a cassette, or lets it go. */
    Shown togglePin(Cassette cassette) {
        List<Cassette> changed = new ArrayList<>(pinned);
        if (!changed.remove(cassette)) {
            changed.add(cassette);
        }
        return new Shown(finding, riders, filter, axes, sorting, selected, changed);
    }

    /** Those listed, the pinned ones first. */
    List<Candidate> rows() {
        Stream<Candidate> rest = finding.shown().stream()
                .filter(candidate -> !pinned.contains(candidate.cassette()))
                .filter(candidate -> filter == Filter.ALL || candidate.suits(riders))
                .sorted(sorting.order());
        return Stream.concat(pinned.stream().flatMap(one -> find(one).stream()), rest)
                .toList();
    }

    /** What is known of a cassette that was found, or of that of today. */
    Optional<Candidate> find(Cassette cassette) {
        return Stream.concat(finding.shown().stream(), Stream.of(finding.today()))
                .filter(candidate -> candidate.cassette().equals(cassette))
                .findFirst();
    }

    Optional<Candidate> chosen() {
        return selected.flatMap(this::find);
    }

    /** The letter of a pinned cassette; empty for others. */
    String letter(Cassette cassette) {
        int at = pinned.indexOf(cassette);
        return at < 0 ? "" : letter(at);
    }

    /** a to z, then aa, ab. */
    private static String letter(int at) {
        String last = Character.toString('a' + at % 26);
        return at < 26 ? last : letter(at / 26 - 1) + last;
    }

    /** A cassette and the pinned ones, as far as they were found, for a decision. */
    List<Found> upForDecision(Cassette chosen) {
        return finding.shown().stream()
                .filter(one -> one.cassette().equals(chosen) || pinned.contains(one.cassette()))
                .map(Candidate::found)
                .toList();
    }
}
