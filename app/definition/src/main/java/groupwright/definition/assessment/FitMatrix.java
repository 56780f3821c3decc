package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which concept fits which bike, and why not; asks the ledger and holds nothing itself. */
public final class FitMatrix {
    private final View view;

    public FitMatrix(View view) {
        this.view = view;
    }

    /** Bikes in use, in the order of their ids. */
    public List<Bike> bikes() {
        return view.definition().all(RecordKinds.BIKE).stream()
                .filter(Bike::isCurrent)
                .toList();
    }

    /** Concepts that are worked on, in the order of their ids. */
    public List<Concept> concepts() {
        return new Assessment(view).concepts();
    }

    /** A criterion of a requirement that is measured on bikes. */
    public record OnBikes(Requirement requirement, Criterion criterion) {
        /** As checks name it, for example {@code R-016.k1}. */
        public String name() {
            return requirement.id() + "." + criterion.id();
        }

        /** Whether the requirement speaks of the bike. */
        public boolean concerns(RecordId bike) {
            return requirement.bikes().isEmpty() || requirement.bikes().contains(bike);
        }
    }

    /** The criteria of requirements in use that are measured on bikes, by requirement. */
    public List<OnBikes> criteria() {
        List<OnBikes> found = new ArrayList<>();
        for (Series.At at : ((Series) view.ask(ask(FitFigures.CRITERIA_ON_BIKES))).values()) {
            RecordId id = FitFigures.requirement(at.at()).orElseThrow();
            Requirement requirement =
                    view.definition().get(id, Requirement.class).orElseThrow();
            requirement.criteria().stream()
                    .filter(criterion -> at.at().endsWith("." + criterion.id()))
                    .forEach(criterion -> found.add(new OnBikes(requirement, criterion)));
        }
        return found;
    }

    /**
     * One check of a concept on a bike.
     *
     * @param name a figure of room, for example {@code ring-room}, or a criterion, for example {@code R-016.k1}
     * @param asked the criterion; nothing for a room
     * @param measured the question whose answer is held against the limit; nothing where it cannot be asked
     * @param verdict on it
     */
    public record Check(String name, Optional<OnBikes> asked, Optional<Ask> measured, Verdict verdict) {}

    /** The worst of the checks. */
    public Verdict fits(RecordId concept, RecordId bike) {
        return (Verdict) view.ask(ask(FitFigures.FITS + " " + concept + " " + bike));
    }

    /** All checks: criteria by requirement first, then rooms. */
    public List<Check> checks(RecordId concept, RecordId bike) {
        List<Check> checks = new ArrayList<>();
        for (OnBikes asked : criteria()) {
            if (asked.concerns(bike)) {
                Criterion criterion = asked.criterion();
                verdict(concept, bike, asked.name())
                        .ifPresent(verdict -> checks.add(new Check(
                                asked.name(),
                                Optional.of(asked),
                                measured(criterion.figure(), verdict.at(), criterion.parameters()),
                                verdict)));
            }
        }
        for (String room : FitFigures.ROOM_ORDER) {
            verdict(concept, bike, room)
                    .ifPresent(verdict -> checks.add(
                            new Check(room, Optional.empty(), measured(room, verdict.at(), Settings.NONE), verdict)));
        }
        return checks;
    }

    /** The bike on which the concept fits worst; nothing where there is no bike. */
    public Optional<RecordId> worstBike(RecordId concept) {
        return worstBike(concept, bikes().stream().map(Bike::id).toList());
    }

    /** The one of some bikes on which the concept fits worst; nothing where there is none. */
    public Optional<RecordId> worstBike(RecordId concept, List<RecordId> among) {
        return among.stream().min((one, other) -> Worst.ORDER.compare(fits(concept, one), fits(concept, other)));
    }

    private Optional<Verdict> verdict(RecordId concept, RecordId bike, String check) {
        Answer answer = view.ask(ask(FitFigures.FIT_CHECK + " " + concept + " " + bike + " check=" + check));
        return answer instanceof Verdict verdict ? Optional.of(verdict) : Optional.empty();
    }

    private Optional<Ask> measured(String figure, Subject subject, Settings parameters) {
        try {
            return view.catalogue().find(figure).map(found -> new Ask(found, subject, parameters));
        } catch (Invalid broken) {
            return Optional.empty(); // the verdict says what is broken
        }
    }

    private Ask ask(String text) {
        return FigureText.parse(text).resolve(view.catalogue(), Optional.empty());
    }
}
