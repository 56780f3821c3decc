package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** Where a cassette stands towards the set of those that no other beats. */
public sealed interface Standing {
    /** It is one of them. */
    record Best(Found cassette) implements Standing {}

    /**
     * Another one beats it.
     *
     * @param cassette the cassette
     * @param by the first cassette of the set, in its order, that beats it
     * @param lead for each chosen objective by how much the other is better, in its unit; 0 or more, up to rounding
     */
    record Beaten(Found cassette, Found by, Map<Objective, Double> lead) implements Standing {
        /** Copies the map. */
        public Beaten {
            lead = Collections.unmodifiableMap(new EnumMap<>(lead));
        }
    }

    /** It breaks a limit, the first of those it breaks in the order of the question. */
    record Breaks(Cassette cassette, Limit limit) implements Standing {}

    /** Its ends or its count are not among those asked for. */
    record Outside(Cassette cassette) implements Standing {}

    /** By how much the first is better in an objective, in its unit; negative if it is worse. */
    static double lead(Objective objective, Measures first, Measures second) {
        double more = first.in(objective) - second.in(objective);
        return objective.better() == Objective.Better.HIGHER ? more : -more;
    }
}
