package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks the ledger how a whole project stands; holds nothing itself, so that it never disagrees with the ledger. */
public final class Assessment {
    private final View view;

    public Assessment(View view) {
        this.view = view;
    }

    private Answer ask(String text) {
        return view.ask(FigureText.parse(text).resolve(view.catalogue(), lead()));
    }

    /** The lead concept, if the project names one that is there. */
    public Optional<RecordId> lead() {
        return view.definition()
                .project()
                .leadConcept()
                .filter(id -> view.definition().get(id, Concept.class).isPresent());
    }

    /** Concepts that are worked on, in the order of their ids. */
    public List<Concept> concepts() {
        return view.definition().all(RecordKinds.CONCEPT).stream()
                .filter(concept -> concept.isCurrent() && concept.state() == Concept.State.PROPOSED)
                .toList();
    }

    /** Requirements in use, parked ones too. */
    public List<Requirement> requirements() {
        return view.definition().all(RecordKinds.REQUIREMENT).stream()
                .filter(Requirement::isCurrent)
                .toList();
    }

    /** How a requirement stands for a concept. */
    public RequirementStanding standing(RecordId requirement, RecordId concept) {
        return new RequirementStanding(
                requirement,
                concept,
                verdict(requirement, concept),
                Rung.highest(ask("ladder " + concept + " " + requirement)));
    }

    /** The worst verdict on a requirement for a concept. */
    public Verdict verdict(RecordId requirement, RecordId concept) {
        return (Verdict) ask("verdict " + concept + " " + requirement);
    }

    /** The verdict on one criterion for a concept. */
    public Verdict verdict(RecordId requirement, RecordId concept, Criterion criterion) {
        return (Verdict) ask("criterion-verdict " + concept + " " + requirement + " criterion=" + criterion.id());
    }

    /** The verdict on a requirement for a concept, looking at one rider group only. */
    public Verdict verdictForRiders(RecordId requirement, RecordId concept, RecordId riders) {
        return (Verdict) ask("verdict-for-riders " + concept + " " + riders + " " + requirement);
    }

    /** How many requirements have reached each rung for a concept; 0 at each where there are none. */
    public Map<Rung, Integer> coverage(RecordId concept) {
        return counts(ask("coverage " + concept));
    }

    /** The same for the requirements about one rider group. */
    public Map<Rung, Integer> coverage(RecordId concept, RecordId riders) {
        return counts(ask("coverage-for-riders " + concept + " " + riders));
    }

    private static Map<Rung, Integer> counts(Answer answer) {
        Map<Rung, Integer> counts = new LinkedHashMap<>();
        for (Rung rung : Rung.values()) {
            counts.put(rung, 0);
        }
        ((Series) answer).values().forEach(at -> {
            for (Rung rung : Rung.values()) {
                if (rung.word().equals(at.at())) {
                    counts.put(rung, (int) at.value());
                }
            }
        });
        return counts;
    }

    /** Rider groups in use. */
    public List<RiderGroup> riderGroups() {
        return view.definition().all(RecordKinds.RIDER_GROUP).stream()
                .filter(RiderGroup::isCurrent)
                .toList();
    }

    /** Needs in use that no requirement answers. */
    public List<Need> unansweredNeeds() {
        return view.definition().all(RecordKinds.NEED).stream()
                .filter(Need::isCurrent)
                .filter(need -> ((Quantity) ask("answers " + need.id())).value() == 0)
                .toList();
    }

    /** Requirements in use that answer no need. */
    public List<Requirement> requirementsWithoutNeed() {
        return requirements().stream()
                .filter(requirement -> requirement.answers().isEmpty())
                .toList();
    }

    /** How a claim stands, with the reason in words. */
    public record ClaimStanding(Claim claim, ClaimState state, String detail) {}

    /** All claims in the order of their ids. */
    public List<ClaimStanding> claims() {
        List<ClaimStanding> standings = new ArrayList<>();
        for (Claim claim : view.definition().all(RecordKinds.CLAIM)) {
            Word word = (Word) ask("claim-state " + claim.id());
            standings.add(new ClaimStanding(claim, ClaimState.of(word.word()).orElseThrow(), word.detail()));
        }
        return standings;
    }

    /** What a change is watched by: verdicts of agreed requirements for each concept, the lead first, and all claims. */
    public List<Ask> watched() {
        List<Ask> asks = new ArrayList<>();
        List<RecordId> concepts = new ArrayList<>(lead().stream().toList());
        concepts().stream()
                .map(Concept::id)
                .filter(id -> !concepts.contains(id))
                .forEach(concepts::add);
        for (RecordId concept : concepts) {
            for (Requirement requirement : requirements()) {
                if (requirement.state() == Requirement.State.AGREED) {
                    asks.add(resolve("verdict " + concept + " " + requirement.id()));
                }
            }
        }
        view.definition().all(RecordKinds.CLAIM).forEach(claim -> asks.add(resolve("claim-state " + claim.id())));
        return asks;
    }

    private Ask resolve(String text) {
        return FigureText.parse(text).resolve(view.catalogue(), lead());
    }
}
