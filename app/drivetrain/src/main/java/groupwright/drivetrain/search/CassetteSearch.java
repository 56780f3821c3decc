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
    private CassetteSearch() {}

    /**
     * The set of all cassettes that keep the limits and that no other beats, ties included.
     *
     * <p>Values are compared as whole numbers: steps exactly, ln² of a step in 1e-9, mismatch in nm, mass in mg.
     * Cost: grows with the number of partial cassettes that none beats, of which at most 8 million are kept, with ways
     * into them counted too (about half a gigabyte at worst; 10 to 52 teeth with 12 cogs and four objectives: 40,000).
     *
     * @throws Cancelled if the progress says so
     * @throws Contradiction if more partial cassettes would have to be kept
     */
    public static BestSet find(Question question, Progress progress) {
        Coverage coverage = Coverage.of(question);
        Scale scale = new Scale(question);
        List<Target> targets = Target.of(question, Admission.of(question));
        Ticker ticker = new Ticker(
                progress,
                Math.max(
                        1,
                        targets.stream()
                                .mapToLong(target -> target.count().most() - 1L)
                                .sum()));
        List<Sweep.End> ends = new ArrayList<>();
        int room = Sweep.MOST_LABELS;
        for (Target target : targets) {
            Sweep sweep = new Sweep(target, scale);
            ends.addAll(sweep.run(room, ticker));
            room -= sweep.weight();
        }
        return new BestSet(question, coverage, scale, Ranking.of(question, scale, ends, ticker));
    }
}
