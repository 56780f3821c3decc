package groupwright.definition.cassettes;

import groupwright.definition.record.Concept;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.CassetteSearch;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Measures;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Progress;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Spread;
import groupwright.drivetrain.search.Standing;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The cassette of a concept among all that could stand in its place: what was asked, the best set, and where its own cogs
 * stand in it.
 *
 * @param concept whose cassette it is about
 * @param best the cassettes that no other beats
 * @param own its own cogs with their values
 * @param standing where these stand
 */
public record Study(Concept concept, BestSet best, Found own, Standing standing) {
    /**
     * What is looked among; what is not said is as the concept has it.
     *
     * @param smallest teeth of the smallest cog
     * @param largest teeth of the largest cog
     * @param count number of cogs
     * @param largestStepPct largest step in percent
     */
    public record Among(
            Optional<Span> smallest, Optional<Span> largest, Optional<Span> count, Optional<Double> largestStepPct) {
        /** The concept's own ends and count, with no step larger than its own largest. */
        public static final Among AS_IT_IS =
                new Among(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Studies a concept's cassette. Cost: one search, milliseconds for fixed ends.
     *
     * @throws groupwright.drivetrain.search.Contradiction if no cassette can answer the question
     */
    public static Study of(Concept concept, Among among) {
        Cassette own = new Cassette(concept.cogs().stream().map(Cog::new).toList());
        BestSet best = CassetteSearch.find(question(own, among), Progress.NONE);
        return new Study(concept, best, new Found(own, Measures.of(own, SprocketMass.ASSUMED)), best.standing(own));
    }

    private static Question question(Cassette own, Among among) {
        Span smallest = among.smallest().orElse(Span.of(own.smallest().teeth()));
        Span largest = among.largest().orElse(Span.of(own.largest().teeth()));
        Span count = among.count().orElse(Span.of(own.cogs().size()));
        boolean ranges = isRange(smallest) || isRange(largest) || isRange(count);
        Set<Objective> objectives =
                ranges ? EnumSet.allOf(Objective.class) : EnumSet.complementOf(EnumSet.of(Objective.GEAR_RANGE));
        double most = among.largestStepPct()
                .orElse(Steps.largest(Steps.of(own)).map(Step::pct).orElse(0.0));
        return new Question(
                smallest,
                largest,
                count,
                most > 0 ? Limits.of(new LargestStep(most, 0)) : Limits.NONE,
                objectives,
                SprocketMass.ASSUMED);
    }

    private static boolean isRange(Span span) {
        return span.most() > span.least();
    }

    /** At most so many of the best set, by the rule of {@link Spread}. */
    public Spread shown(int most) {
        return Spread.of(best, most);
    }

    /** The concept's cogs with one inner cog a tooth smaller or larger, and what that changes. */
    public List<Neighbour> neighbours() {
        return Neighbour.of(own.cassette(), best.question());
    }
}
