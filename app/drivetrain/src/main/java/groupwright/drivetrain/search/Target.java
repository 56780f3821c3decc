package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The cassettes that are searched in one go: all from one smallest cog, for each largest cog and count of the ranges.
 *
 * @param smallest teeth of the smallest cog
 * @param largest teeth of the largest cog
 * @param count number of cogs
 * @param admission what the limits admit among them
 */
record Target(int smallest, Span largest, Span count, Admission admission) {

    /** The question taken apart: by smallest cog, or further where a limit reads differently for each end and count. */
    static List<Target> of(Question question, Admission admission) {
        List<Target> targets = new ArrayList<>();
        for (int s = question.smallest().least(); s <= question.smallest().most() && s < admission.high; s++) {
            if (!admission.dependsOnEnds()) {
                targets.add(new Target(s, question.largest(), question.count(), admission));
                continue;
            }
            for (int l = Math.max(s + 1, question.largest().least());
                    l <= question.largest().most();
                    l++) {
                for (int n = question.count().least(); n <= question.count().most(); n++) {
                    targets.add(new Target(s, Span.of(l), Span.of(n), admission.forCassettes(s, l, n)));
                }
            }
        }
        return targets;
    }

    /** Whether a cassette may end here. */
    boolean endsAt(int position, int teeth) {
        return count.holds(position) && largest.holds(teeth) && teeth > smallest && admission.ends(smallest, teeth);
    }
}
