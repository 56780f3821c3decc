package groupwright.definition.figure;

import java.util.Collection;
import java.util.Optional;

/** Finds the known name that a mistyped one most likely meant. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known name with the fewest letters added, dropped or changed (Levenshtein distance), if at most a third of its
     * letters differ; the first in the given order among equals. O(names × letters²).
     */
    public static Optional<String> of(String typed, Collection<String> known) {
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String name : known) {
            int distance = distance(typed, name);
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        return least <= Math.max(2, best.length() / 3) && !best.isEmpty() ? Optional.of(best) : Optional.empty();
    }

    private static int distance(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[to.length()];
    }
}
