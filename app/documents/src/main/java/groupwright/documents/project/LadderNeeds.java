package groupwright.documents.project;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Climb;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.charts.GearLadder;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measured;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a rider group's agreed requirements ask of the lowest and highest gear, as metres per crank turn. The ledger
 * answers for some concept; from that gear the needed one follows, since at one speed cadence and development are
 * inversely proportional, and at one cadence speed and development are proportional.
 */
final class LadderNeeds {
    private static final int DECIMALS = 2;

    private final View view;
    private final Assessment assessment;
    private final Reader reader;
    private final Labels labels;
    private final RecordId riders;

    LadderNeeds(View view, Reader reader, RecordId riders) {
        this.view = view;
        this.assessment = new Assessment(view);
        this.reader = reader;
        this.labels = Labels.of(reader.locale());
        this.riders = riders;
    }

    /** In the order of requirements; those whose answer lacks an input are left out. */
    List<GearLadder.Need> all() {
        List<GearLadder.Need> needs = new ArrayList<>();
        for (Requirement requirement : assessment.requirements()) {
            boolean about =
                    requirement.riders().isEmpty() || requirement.riders().contains(riders);
            if (requirement.state() == Requirement.State.AGREED && about) {
                requirement
                        .criteria()
                        .forEach(criterion -> need(requirement, criterion).ifPresent(needs::add));
            }
        }
        return needs;
    }

    private Optional<GearLadder.Need> need(Requirement requirement, Criterion criterion) {
        double target = criterion.target().value();
        String asked = criterion.figure() + " " + criterion.comparator();
        return switch (asked) {
            case "climb-cadence AT_LEAST" ->
                answer("lowest-development")
                        .flatMap(lowest -> answer(question(criterion)).map(cadence -> lowest * cadence / target))
                        .map(metres -> need("ladder.needs.most", requirement, metres, onClimb(criterion)));
            case "spin-out-speed AT_LEAST" ->
                answer("highest-development")
                        .flatMap(highest -> answer(question(criterion)).map(speed -> highest * target / speed))
                        .map(metres -> need("ladder.needs.least", requirement, metres, amount(criterion)));
            case "lowest-development AT_MOST" -> Optional.of(need("ladder.needs.mostPlain", requirement, target, ""));
            case "highest-development AT_LEAST" ->
                Optional.of(need("ladder.needs.leastPlain", requirement, target, ""));
            default -> Optional.empty();
        };
    }

    private GearLadder.Need need(String key, Requirement requirement, double metres, String why) {
        String length = reader.in("m").text(metres, DECIMALS);
        return new GearLadder.Need(metres, labels.text(key, requirement.id().text(), length, why));
    }

    private Optional<Double> answer(String question) {
        Optional<RecordId> concept = assessment
                .lead()
                .or(() -> assessment.concepts().stream().findFirst().map(Concept::id));
        return concept.flatMap(id -> number(question + " " + id + " " + riders)).filter(value -> value > 0);
    }

    private Optional<Double> number(String question) {
        Answer answer = view.ask(FigureText.parse(question).resolve(view.catalogue(), assessment.lead()));
        return answer instanceof Quantity quantity ? Optional.of(quantity.value()) : Optional.empty();
    }

    private static String question(Criterion criterion) {
        return criterion.figure() + " " + criterion.parameters();
    }

    private String onClimb(Criterion criterion) {
        String climb = criterion.parameters().get("climb").orElse("");
        return view.definition().get(riders, RiderGroup.class).stream()
                .flatMap(group -> group.climbs().stream())
                .filter(known -> known.id().equals(climb))
                .findFirst()
                .map(Climb::grade_pct)
                .map(grade -> labels.text("ladder.onClimb", amount(criterion), reader.exact(grade.value()) + "\u202F%"))
                .orElse(amount(criterion));
    }

    private String amount(Criterion criterion) {
        Measured measured = reader.in(criterion.unit());
        return measured.with(measured.exact(criterion.target().value())).text();
    }
}
