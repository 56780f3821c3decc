package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds exactly the cassettes that no other beats.
 *
 * <p>One beats another if it is at least as good in each chosen objective and better in one. Method: Martins' label
 * setting (Martins 1984, from memory) on the layered graph of (position, teeth), with a largest step beside the sums.
 */
public final class CassetteSearch {
    private static final int MOST_PARTIAL = 4_000_000;

    private CassetteSearch() {}

    /**
     * The set of all cassettes that keep the limits and that no other beats, ties included.
     *
     * <p>Values are compared as whole numbers: steps exactly, ln² of a step in 1e-9, mismatch in nm, mass in mg.
     *
     * <p>Cost: grows with the number of partial cassettes that may still end best; 10 to 52 teeth with 12 cogs and four
     * objectives have 43,000 of them, 9–12 to 32–52 teeth with 9–13 cogs and all five 280,000. Memory: at most 4 million
     * are kept, a complete one counting as three, at 37 bytes each and up to twice that while arrays grow: 300 MB. The
     * cassettes themselves are unfolded from them one by one and never kept.
     *
     * @throws Cancelled if the progress says so
     * @throws Contradiction if more partial cassettes would have to be kept
     */
    public static BestSet find(Question question, Progress progress) {
        return find(question, progress, MOST_PARTIAL);
    }

    static BestSet find(Question question, Progress progress, int most) {
        Coverage coverage = Coverage.of(question);
        Scale scale = new Scale(question);
        List<Target> targets = Target.of(question, Admission.of(question));
        long layers =
                targets.stream().mapToLong(target -> target.count().most() - 1L).sum();
        Ticker ticker = new Ticker(progress, layers);
        List<Sweep.End> ends = new ArrayList<>();
        int room = most;
        for (Target target : targets) {
            Sweep sweep = new Sweep(target, scale, room);
            ends.addAll(sweep.run(ticker));
            room -= sweep.weight();
        }
        return new BestSet(question, coverage, scale, Ranking.of(question, scale, ends, ticker));
    }
}
