package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Which cassettes to search, and by what to compare them.
 *
 * <p>Without {@link Objective#GEAR_RANGE} only cassettes with the same ends and the same count are compared, so over
 * ranges the answer holds one set for each of them; with it all are compared with all.
 *
 * @param smallest teeth of the smallest cog, 5 to 80
 * @param largest teeth of the largest cog, 5 to 80
 * @param count number of cogs, 2 to 20
 * @param limits what each cassette has to keep
 * @param objectives what they are compared by, at least one
 * @param mass how the mass of sprockets is estimated
 */
public record Question(
        Span smallest, Span largest, Span count, Limits limits, Set<Objective> objectives, SprocketMass mass) {

    /** Throws {@link Contradiction} if no cassette can answer it. */
    public Question {
        objectives = Collections.unmodifiableSet(
                objectives.isEmpty() ? EnumSet.noneOf(Objective.class) : EnumSet.copyOf(objectives));
        Contradictions.refuse(smallest, largest, count, limits, objectives);
    }

    /** Cassettes without limits and with the assumed sprocket mass. */
    public static Question of(Span smallest, Span largest, Span count, Objective... objectives) {
        return new Question(smallest, largest, count, Limits.NONE, Set.of(objectives), SprocketMass.ASSUMED);
    }

    /** Cassettes with these ends and so many cogs, without limits and with the assumed sprocket mass. */
    public static Question of(int smallest, int largest, int count, Objective... objectives) {
        return of(Span.of(smallest), Span.of(largest), Span.of(count), objectives);
    }

    /** The same question with other limits. */
    public Question with(Limits other) {
        return new Question(smallest, largest, count, other, objectives, mass);
    }

    /** The same question with another estimate of mass. */
    public Question with(SprocketMass other) {
        return new Question(smallest, largest, count, limits, objectives, other);
    }

    /** Whether cassettes of different ends and counts are compared with each other. */
    public boolean comparesAll() {
        return objectives.contains(Objective.GEAR_RANGE);
    }

    /** Whether a cassette lies within ends and count; limits are not looked at. */
    public boolean spans(Cassette cassette) {
        return smallest.holds(cassette.smallest().teeth())
                && largest.holds(cassette.largest().teeth())
                && count.holds(cassette.cogs().size());
    }

    /** The chosen objectives in the order of {@link Objective}. */
    public List<Objective> ordered() {
        return List.copyOf(objectives);
    }
}
