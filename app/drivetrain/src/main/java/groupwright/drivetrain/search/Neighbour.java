package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A cassette that differs from another in one tooth of one inner cog.
 *
 * @param found the cassette with its values
 * @param from teeth of the cog before
 * @param to teeth of the cog now, one more or one fewer
 * @param change value now - value before in each objective, in its unit
 * @param broken the first limit it breaks; empty if it keeps all
 */
public record Neighbour(Found found, int from, int to, Map<Objective, Double> change, Optional<Limit> broken) {
    /** Copies the map. */
    public Neighbour {
        change = Collections.unmodifiableMap(new EnumMap<>(change));
    }

    /**
     * All neighbours of a cassette, smallest changed cog first, one tooth fewer before one more; ends stay.
     *
     * <p>Cost: O(n²) in the number of cogs.
     */
    public static List<Neighbour> of(Cassette cassette, Question question) {
        Measures before = Measures.of(cassette, question.mass());
        List<Cog> cogs = cassette.cogs();
        List<Neighbour> neighbours = new ArrayList<>();
        for (int i = 1; i < cogs.size() - 1; i++) {
            for (int teeth = cogs.get(i).teeth() - 1; teeth <= cogs.get(i).teeth() + 1; teeth += 2) {
                if (cogs.get(i - 1).teeth() < teeth && teeth < cogs.get(i + 1).teeth()) {
                    List<Cog> changed = new ArrayList<>(cogs);
                    changed.set(i, new Cog(teeth));
                    neighbours.add(of(new Cassette(changed), cogs.get(i).teeth(), teeth, before, question));
                }
            }
        }
        return neighbours;
    }

    private static Neighbour of(Cassette cassette, int from, int to, Measures before, Question question) {
        Measures after = Measures.of(cassette, question.mass());
        Map<Objective, Double> change = new EnumMap<>(Objective.class);
        for (Objective objective : Objective.values()) {
            change.put(objective, after.in(objective) - before.in(objective));
        }
        return new Neighbour(
                new Found(cassette, after), from, to, change, question.limits().firstBrokenBy(cassette));
    }
}
