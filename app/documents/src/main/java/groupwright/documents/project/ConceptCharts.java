package groupwright.documents.project;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Series;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.GearLadder;
import groupwright.documents.charts.StepBars;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Charts of concepts' gears, made of what the ledger answers, for pages and for the screen. Ledger thread. */
public final class ConceptCharts {
    private final View view;
    private final Assessment assessment;
    private final Reader reader;

    public ConceptCharts(View view, Reader reader) {
        this.view = view;
        this.assessment = new Assessment(view);
        this.reader = reader;
    }

    /**
     * A gear ladder, or what stands in its way.
     *
     * @param chart nothing where no concept has a gear to show
     * @param missing what those concepts lack that are left out, in the order of concepts
     */
    public record Ladder(Optional<GearLadder> chart, List<Missing> missing) {
        public Ladder {
            missing = List.copyOf(missing);
        }
    }

    /**
     * The gears of some concepts on the wheel of a rider group, and what that group needs of the lowest and highest one.
     * Costs one answer for each concept and criterion.
     */
    public Ladder gearLadder(List<Concept> concepts, RecordId riders) {
        List<GearLadder.Lane> lanes = new ArrayList<>();
        List<Missing> missing = new ArrayList<>();
        for (Concept concept : concepts) {
            Answer answer = ask("developments " + concept.id() + " " + riders);
            if (answer instanceof Series series) {
                lanes.addAll(lanes(concept, series));
            } else if (answer instanceof Missing lacking) {
                missing.add(lacking);
            }
        }
        if (lanes.isEmpty()) {
            return new Ladder(Optional.empty(), missing);
        }
        List<GearLadder.Need> needs = new LadderNeeds(view, reader, riders).all();
        return new Ladder(Optional.of(new GearLadder(riders.text(), lanes, needs, reader)), missing);
    }

    private List<GearLadder.Lane> lanes(Concept concept, Series developments) {
        List<GearLadder.Lane> lanes = new ArrayList<>();
        for (int ring : concept.rings()) {
            List<Double> metres = developments.values().stream()
                    .filter(at -> at.at().startsWith(ring + "/"))
                    .map(Series.At::value)
                    .toList();
            if (!metres.isEmpty()) { // all its gears may be excluded
                lanes.add(new GearLadder.Lane(sign(concept.id()), concept.id().text(), ring, metres));
            }
        }
        return lanes;
    }

    /** The rider group that counts most; of equally important ones the first. */
    public Optional<RecordId> mostImportantRiders() {
        return assessment.riderGroups().stream()
                .max(Comparator.comparingInt(RiderGroup::importance)
                        .thenComparing(RiderGroup::id, Comparator.reverseOrder()))
                .map(RiderGroup::id);
    }

    /** The steps of one concept; nothing where it has a single cog. */
    public Optional<StepBars> stepBars(Concept concept, Optional<StepBars.Limit> limit) {
        List<StepBars.Step> steps = steps(concept);
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(StepBars.of(sign(concept.id()), concept.id().text(), steps, limit, reader.locale()));
    }

    /** The steps of several concepts to the same height, so that bars can be compared across; single cogs are left out. */
    public Map<RecordId, StepBars> stepBarsSideBySide(List<Concept> concepts, Optional<StepBars.Limit> limit) {
        Map<RecordId, StepBars> all = new HashMap<>(); // looked up only
        concepts.forEach(concept -> stepBars(concept, limit).ifPresent(bars -> all.put(concept.id(), bars)));
        double top = all.values().stream().mapToDouble(StepBars::topPct).max().orElse(0);
        all.replaceAll(
                (id, bars) -> new StepBars(bars.sign(), bars.concept(), bars.steps(), limit, top, bars.locale()));
        return Map.copyOf(all);
    }

    private List<StepBars.Step> steps(Concept concept) {
        Map<String, Double> sizes = byPosition(ask("steps " + concept.id()));
        Map<String, Double> positions = byPosition(ask("like-positions " + concept.id()));
        List<StepBars.Step> steps = new ArrayList<>();
        for (int i = 1; i < concept.cogs().size(); i++) {
            int smaller = concept.cogs().get(i - 1);
            int larger = concept.cogs().get(i);
            String pair = smaller + "-" + larger;
            steps.add(new StepBars.Step(
                    smaller, larger, sizes.get(pair), positions.get(pair).intValue()));
        }
        return steps;
    }

    /** The limit of the first agreed requirement on the largest step. */
    public Optional<StepBars.Limit> requiredLimit() {
        return assessment.requirements().stream()
                .filter(requirement -> requirement.state() == Requirement.State.AGREED)
                .flatMap(requirement -> requirement.criteria().stream())
                .filter(criterion -> criterion.figure().equals("largest-step")
                        && criterion.comparator() == Criterion.Comparator.AT_MOST
                        && criterion.target().value() > 0)
                .findFirst()
                .map(criterion -> new StepBars.Limit(
                        fromTeeth(criterion.parameters()), criterion.target().value()));
    }

    private static int fromTeeth(Settings parameters) {
        return parameters
                .get("from-teeth")
                .map(text -> (int) BlockArguments.fromZero("from-teeth", text))
                .orElse(0);
    }

    /** A concept keeps its sign for ever, so it comes from its number and not from what else is there. */
    public ConceptSign sign(RecordId concept) {
        boolean lead = assessment.lead().equals(Optional.of(concept));
        return new ConceptSign(
                Math.max(1, concept.number()), lead ? ConceptSign.Standing.LEAD : ConceptSign.Standing.OTHER);
    }

    private Answer ask(String question) {
        Ask resolved = FigureText.parse(question).resolve(view.catalogue(), assessment.lead());
        return view.ask(resolved);
    }

    /** The values of a list by their positions; empty for any other answer. */
    static Map<String, Double> byPosition(Answer answer) {
        Map<String, Double> values = new HashMap<>(); // looked up only
        if (answer instanceof Series series) {
            series.values().forEach(at -> values.put(at.at(), at.value()));
        }
        return values;
    }
}
