package groupwright.definition.cassettes;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Decision;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Objective;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A decision about cassettes, drafted: options with scores by each objective, all weights equal, nothing chosen. People
 * weigh, choose and say why.
 */
public final class DecisionDraft {
    private static final double TOP = 10;

    private DecisionDraft() {}

    /**
     * The draft.
     *
     * <p>Scores run from 0 for the worst of the options to 10 for the best, evenly in the value; equal values score 10.
     *
     * @param id of the record to be
     * @param study what it is drafted from; its own cassette is the first option
     * @param others further options; one equal to the own cassette is left out
     */
    public static Decision of(RecordId id, Study study, List<Found> others) {
        return of(id, study.concept().id(), study.best().question().ordered(), study.own(), others);
    }

    /**
     * The same from cassettes found otherwise.
     *
     * @param id of the record to be
     * @param concept whose cogs are decided
     * @param objectives by what, at least one
     * @param own the cogs it has today
     * @param others further options; those that stand twice are left out
     */
    public static Decision of(
            RecordId id, RecordId concept, List<Objective> objectives, Found own, List<Found> others) {
        List<Found> found = new ArrayList<>(List.of(own));
        for (Found other : others) {
            if (!found.contains(other)) {
                found.add(other);
            }
        }
        List<Decision.Option> options = new ArrayList<>();
        List<Decision.Score> scores = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            String option = option(i);
            options.add(new Decision.Option(
                    option, teeth(found.get(i).cassette()), i == 0 ? Optional.of(concept) : Optional.empty()));
            for (Objective objective : objectives) {
                scores.add(new Decision.Score(
                        option + "-" + objective.id(),
                        option,
                        objective.id(),
                        Amount.of(score(found, found.get(i), objective))));
            }
        }
        double weight = Math.round(1000.0 / objectives.size()) / 10.0;
        return new Decision(
                id,
                "Cassette of " + concept,
                "Which cogs does " + concept + " get?",
                options,
                objectives.stream()
                        .map(objective -> new Decision.Weighing(objective.id(), name(objective), Amount.of(weight)))
                        .toList(),
                scores,
                "",
                "",
                "",
                Optional.empty(),
                List.of(),
                "");
    }

    private static String option(int place) {
        return place == 0 ? "today" : "o" + place;
    }

    /** Cogs as people write them. */
    public static String teeth(Cassette cassette) {
        return cassette.cogs().stream().map(Cog::teeth).map(Object::toString).collect(Collectors.joining(" "));
    }

    private static String name(Objective objective) {
        return switch (objective) {
            case LARGEST_STEP -> "Largest step";
            case UNEVENNESS -> "Unevenness of the steps";
            case MISMATCH -> "Sum of phase mismatch";
            case MASS -> "Estimated weight of the cogs";
            case GEAR_RANGE -> "Gear range";
        };
    }

    private static double score(List<Found> all, Found one, Objective objective) {
        double least = all.stream()
                .mapToDouble(found -> found.values().in(objective))
                .min()
                .orElseThrow();
        double most = all.stream()
                .mapToDouble(found -> found.values().in(objective))
                .max()
                .orElseThrow();
        if (most - least < 1e-9) {
            return TOP;
        }
        double share = (one.values().in(objective) - least) / (most - least);
        double good = objective.better() == Objective.Better.HIGHER ? share : 1 - share;
        return Math.round(good * TOP * 10) / 10.0;
    }
}
