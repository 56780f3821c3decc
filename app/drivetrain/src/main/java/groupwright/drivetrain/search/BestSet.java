package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * The cassettes that no other beats, counted and unfolded only when asked for.
 *
 * <p>Order: unless all are compared with all, by smallest cog, largest cog, count; then by the chosen objectives in the
 * order of {@link Objective}, best first; then by the cogs from the largest down, fewer teeth first.
 */
public final class BestSet {
    private final Question question;
    private final Coverage coverage;
    private final Scale scale;
    private final List<Tie> ties;
    private final long[] before;

    BestSet(Question question, Coverage coverage, Scale scale, List<Tie> ties) {
        this.question = question;
        this.coverage = coverage;
        this.scale = scale;
        this.ties = List.copyOf(ties);
        before = new long[ties.size() + 1];
        for (int i = 0; i < ties.size(); i++) {
            before[i + 1] = Math.addExact(before[i], ties.get(i).count());
        }
    }

    /** What was asked. */
    public Question question() {
        return question;
    }

    /** How many cassettes this answer speaks for. */
    public Coverage coverage() {
        return coverage;
    }

    /** How many cassettes the set has; exact. */
    public long count() {
        return before[ties.size()];
    }

    /** How many different values the set has: cassettes with equal values count once (over equal ends and count). */
    public int values() {
        return ties.size();
    }

    /**
     * One cassette of the set. Cost: O(cogs · ways into a partial cassette).
     *
     * @param index from 0 to {@link #count} - 1
     * @throws IndexOutOfBoundsException outside these
     */
    public Found get(long index) {
        int tie = tieAt(Objects.checkIndex(index, count()));
        return found(Cassette.of(ties.get(tie).cogs(index - before[tie])));
    }

    /** All cassettes in order, each unfolded when it is taken. */
    public Stream<Found> stream() {
        return LongStream.range(0, count()).mapToObj(this::get);
    }

    private int tieAt(long index) {
        int at = Arrays.binarySearch(before, index);
        return at >= 0 ? at : -at - 2;
    }

    private Found found(Cassette cassette) {
        return new Found(cassette, Measures.of(cassette, question.mass()));
    }

    /** Where a cassette stands. Cost: O(number of different values). */
    public Standing standing(Cassette cassette) {
        if (!question.spans(cassette)) {
            return new Standing.Outside(cassette);
        }
        Optional<Limit> broken = question.limits().firstBrokenBy(cassette);
        if (broken.isPresent()) {
            return new Standing.Breaks(cassette, broken.get());
        }
        long[] vector = scale.vector(cassette);
        for (Tie tie : ties) {
            if (compared(tie, cassette) && Tie.beats(tie.vector(), vector)) {
                return beaten(found(cassette), found(Cassette.of(tie.cogs(0))));
            }
        }
        return new Standing.Best(found(cassette));
    }

    private boolean compared(Tie tie, Cassette cassette) {
        return question.comparesAll() || tie.ends().get(0).ends().equals(Ends.of(cassette));
    }

    private Standing beaten(Found cassette, Found by) {
        Map<Objective, Double> lead = new EnumMap<>(Objective.class);
        for (Objective objective : question.objectives()) {
            lead.put(objective, Standing.lead(objective, by.values(), cassette.values()));
        }
        return new Standing.Beaten(cassette, by, lead);
    }

    List<Tie> ties() {
        return ties;
    }

    /** Index of the first cassette of a tie. */
    long firstOf(int tie) {
        return before[tie];
    }
}
