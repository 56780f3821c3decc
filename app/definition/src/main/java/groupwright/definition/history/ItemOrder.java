package groupwright.definition.history;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * In which order the objects of a list stand after two sides changed it.
 *
 * @param ids the ids in order
 * @param isDisputed whether both sides put the objects they share in another order, and not the same; then ours is kept
 */
record ItemOrder(List<String> ids, boolean isDisputed) {
    private static final String START = "";

    ItemOrder {
        ids = List.copyOf(ids);
    }

    /**
     * The objects both sides have stand as the side has them that changed their order; those of one side only follow the
     * one they follow there. The same whichever side is called ours, but where the order is disputed.
     *
     * @param kept the ids that are to stand in the list
     */
    static ItemOrder joined(
            List<String> base, Collection<String> ours, Collection<String> theirs, Collection<String> kept) {
        Set<String> common = new HashSet<>(kept);
        common.retainAll(Set.copyOf(ours));
        common.retainAll(Set.copyOf(theirs));
        List<String> here = only(ours, common);
        List<String> there = only(theirs, common);
        List<String> was = only(base, common);
        boolean theirsMoved = !there.equals(here) && here.equals(was);
        boolean disputed = !there.equals(here) && !here.equals(was) && !there.equals(was);
        List<String> spine = theirsMoved ? there : here;
        Map<String, List<String>> ourRuns = runs(only(ours, Set.copyOf(kept)), common);
        Map<String, List<String>> theirRuns = runs(only(theirs, Set.copyOf(kept)), common);
        List<String> ids = new ArrayList<>();
        addRuns(ids, START, ourRuns, theirRuns);
        for (String id : spine) {
            ids.add(id);
            addRuns(ids, id, ourRuns, theirRuns);
        }
        return new ItemOrder(ids, disputed);
    }

    private static List<String> only(Collection<String> ids, Set<String> wanted) {
        return ids.stream().filter(wanted::contains).toList();
    }

    /** The ids that are not common, under the last common one before them. */
    private static Map<String, List<String>> runs(List<String> ids, Set<String> common) {
        Map<String, List<String>> runs = new HashMap<>();
        String anchor = START;
        for (String id : ids) {
            if (common.contains(id)) {
                anchor = id;
            } else {
                runs.computeIfAbsent(anchor, any -> new ArrayList<>()).add(id);
            }
        }
        return runs;
    }

    private static void addRuns(
            List<String> ids, String anchor, Map<String, List<String>> ours, Map<String, List<String>> theirs) {
        List<String> here = ours.getOrDefault(anchor, List.of());
        List<String> there = theirs.getOrDefault(anchor, List.of());
        boolean oursFirst = here.isEmpty() || there.isEmpty() || here.get(0).compareTo(there.get(0)) < 0;
        ids.addAll(oursFirst ? here : there);
        ids.addAll(oursFirst ? there : here);
    }
}
