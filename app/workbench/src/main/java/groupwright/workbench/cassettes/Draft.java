package groupwright.workbench.cassettes;

import groupwright.definition.record.Concept;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.Objective;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The limits as they are typed.
 *
 * @param texts what stands in each field; a field that is not named is empty
 * @param jumps how jumps may follow one another
 * @param objectives what "better" means
 */
record Draft(Map<Entry, String> texts, Jumps jumps, Set<Objective> objectives) {
    /** How jumps may follow one another. */
    enum Jumps {
        ANY,
        NEVER_SHRINK
    }

    /** So far the largest cog may lie from that of today. */
    private static final int AROUND = 3;

    private static final int MOST_TEETH = 80;

    Draft {
        texts = texts.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(texts));
        objectives = objectives.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(objectives));
    }

    /** Cassettes about like that of a concept, with no larger step than it has. */
    static Draft about(Concept concept) {
        List<Integer> cogs = concept.cogs();
        int largest = cogs.get(cogs.size() - 1);
        double step = Steps.largest(
                        Steps.of(new Cassette(cogs.stream().map(Cog::new).toList())))
                .map(Step::pct)
                .orElse(20.0);
        Map<Entry, String> texts = new EnumMap<>(Entry.class);
        texts.put(Entry.SMALLEST_FROM, cogs.get(0).toString());
        texts.put(Entry.SMALLEST_TO, cogs.get(0).toString());
        texts.put(Entry.LARGEST_FROM, Integer.toString(largest - AROUND));
        texts.put(Entry.LARGEST_TO, Integer.toString(Math.min(MOST_TEETH, largest + AROUND)));
        texts.put(Entry.COGS_FROM, Integer.toString(cogs.size()));
        texts.put(Entry.COGS_TO, Integer.toString(cogs.size()));
        texts.put(Entry.STEP, Integer.toString((int) Math.ceil(step - 1e-9)));
        texts.put(Entry.RINGS, concept.rings().stream().map(String::valueOf).collect(Collectors.joining("/")));
        return new Draft(texts, Jumps.ANY, EnumSet.complementOf(EnumSet.of(Objective.GEAR_RANGE)));
    }

    /** What stands in a field. */
    String text(Entry entry) {
        return texts.getOrDefault(entry, "");
    }

    Draft with(Entry entry, String text) {
        Map<Entry, String> changed = new EnumMap<>(Entry.class);
        changed.putAll(texts);
        changed.put(entry, text.strip());
        return new Draft(changed, jumps, objectives);
    }

    Draft with(Jumps other) {
        return new Draft(texts, other, objectives);
    }

    Draft with(Set<Objective> other) {
        return new Draft(texts, jumps, other);
    }
}
