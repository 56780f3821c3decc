package groupwright.definition.figure;

import java.util.Collection;
import java.util.Optional;

/** Finds what somebody meant who mistyped a name. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known name with the fewest typing mistakes, at most one in three letters; ties go to the first.
     * Cost: length of {@code name} times the letters of all known names.
     */
    public static Optional<String> of(String name, Collection<String> known) {
        String best = "";
        int fewest = Math.max(1, name.length() / 3) + 1;
        for (String candidate : known) {
            if (Math.abs(candidate.length() - name.length()) < fewest) {
                int mistakes = mistakes(name, candidate);
                if (mistakes < fewest) {
                    fewest = mistakes;
                    best = candidate;
                }
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** Insertions, deletions, replacements and swaps of neighbours (optimal string alignment distance). */
    static int mistakes(String typed, String meant) {
        int[][] cost = new int[typed.length() + 1][meant.length() + 1];
        for (int i = 0; i <= typed.length(); i++) {
            for (int j = 0; j <= meant.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                boolean same = typed.charAt(i - 1) == meant.charAt(j - 1);
                cost[i][j] =
                        Math.min(cost[i - 1][j - 1] + (same ? 0 : 1), 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                boolean swapped = i > 1
                        && j > 1
                        && typed.charAt(i - 1) == meant.charAt(j - 2)
                        && typed.charAt(i - 2) == meant.charAt(j - 1);
                if (swapped) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[typed.length()][meant.length()];
    }
}
