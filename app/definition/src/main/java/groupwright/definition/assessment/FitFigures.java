package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Criterion.Comparator;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether a concept fits a bike: what the bike leaves room for, and each criterion that is measured on bikes. */
public final class FitFigures implements FigureFamily {
    /** The worst of all checks of a concept on a bike. */
    public static final String FITS = "fits";

    /** One of them. */
    public static final String FIT_CHECK = "fit-check";

    /** The criteria of requirements in use that are measured on bikes. */
    public static final String CRITERIA_ON_BIKES = "criteria-on-bikes";

    private static final String RING_ROOM = "ring-room";
    private static final String DRIVER_ROOM = "driver-room";
    private static final String CHAIN_LINE_ROOM = "chain-line-room";
    private static final String TYRE_ROOM = "tyre-room";
    private static final String LINKS_TO_SPARE = "links-to-spare";
    private static final String GEARS_NOT_CLOSING = "gears-not-closing";

    /** Which check {@link #FIT_CHECK} is asked for: a figure of room, or a criterion as {@code R-016.k1}. */
    static final Parameter CHECK =
            Parameter.word("check", "a room, for example ring-room, or a criterion, for example R-016.k1");

    private static final String SOURCE =
            "House rule: a concept fits where nothing touches, the chain reaches and closes,"
                    + " and every requirement measured on the bike is met.";

    /** What must hold on each bike whether a requirement asks for it or not, with the side on which it holds. */
    private static final Map<String, Comparator> ROOMS = Map.of(
            RING_ROOM, Comparator.AT_LEAST,
            DRIVER_ROOM, Comparator.AT_LEAST,
            CHAIN_LINE_ROOM, Comparator.AT_LEAST,
            TYRE_ROOM, Comparator.AT_LEAST,
            LINKS_TO_SPARE, Comparator.AT_LEAST,
            GEARS_NOT_CLOSING, Comparator.AT_MOST);

    /** The rooms in the order in which they are shown. */
    static final List<String> ROOM_ORDER =
            List.of(LINKS_TO_SPARE, GEARS_NOT_CLOSING, CHAIN_LINE_ROOM, RING_ROOM, DRIVER_ROOM, TYRE_ROOM);

    @Override
    public List<Figure> figures() {
        return List.of(
                Figure.named(CRITERIA_ON_BIKES, "Criteria measured on bikes")
                        .level(Level.ASSESSMENT)
                        .formula("the criteria of requirements in use whose figure is about a bike")
                        .source(SOURCE)
                        .example(CRITERIA_ON_BIKES, "")
                        .computedBy(FitFigures::criteria),
                Figure.named(FIT_CHECK, "One check of the fit")
                        .of(Scope.CONCEPT, Scope.BIKE)
                        .with(CHECK)
                        .level(Level.ASSESSMENT)
                        .formula(
                                "a room: not below 0, or no gear that does not close; a criterion: its verdict on this bike")
                        .source(SOURCE)
                        .example("fit-check C-901 B-901 check=ring-room", "meets")
                        .computedBy(FitFigures::check),
                Figure.named(FITS, "Fit")
                        .of(Scope.CONCEPT, Scope.BIKE)
                        .level(Level.ASSESSMENT)
                        .uses(FIT_CHECK, CRITERIA_ON_BIKES)
                        .formula(
                                "the worst of the checks: chain long enough, every gear in use closes, chain line, ring,"
                                        + " driver body and tyres have room, every criterion measured on bikes is met")
                        .source(SOURCE)
                        .leavesOut("brake, frame and wheel beyond the fields of the bike; whether a fitting was tried")
                        .example("fits C-901 B-901", "meets")
                        .computedBy(FitFigures::fits));
    }

    private static Answer criteria(Inputs in) {
        List<Series.At> found = new ArrayList<>();
        for (RecordId requirement : in.all(RecordKinds.REQUIREMENT)) {
            if (in.get(requirement, Requirement.RETIRED).isEmpty()
                    && in.get(requirement, Requirement.STATE) != Requirement.State.PARKED) {
                for (String id : in.items(requirement, Requirement.CRITERIA)) {
                    boolean onBikes = in.item(requirement, Requirement.CRITERIA, id, Criterion.FIGURE)
                            .flatMap(in.catalogue()::find)
                            .filter(figure -> figure.level() == Level.CALCULUS)
                            .filter(figure -> figure.scopes().contains(Scope.BIKE))
                            .isPresent();
                    if (onBikes) {
                        found.add(new Series.At(requirement + "." + id, 1));
                    }
                }
            }
        }
        return new Series(Unit.NONE, found);
    }

    private static Answer check(Inputs in) {
        String check = in.word(CHECK.name());
        if (ROOMS.containsKey(check)) {
            return room(in, check);
        }
        RecordId requirement = requirement(check)
                .orElseThrow(() -> new Invalid(
                        CHECK.name(),
                        "\"" + check + "\" is no check",
                        "write one of " + String.join(", ", ROOM_ORDER) + ", or a criterion like R-016.k1"));
        return new Judging(in, requirement, check.substring(check.indexOf('.') + 1))
                .judgeOn(in.subject(Scope.BIKE))
                .ofCriterion(check);
    }

    private static Verdict room(Inputs in, String room) {
        if (!room.equals(TYRE_ROOM)) {
            return room(in, room, in.subject());
        }
        List<Verdict> tyres = in.all(RecordKinds.RIDER_GROUP).stream()
                .filter(riders -> in.get(riders, RiderGroup.RETIRED).isEmpty())
                .map(riders -> room(in, room, Subject.of(riders, in.subject(Scope.BIKE))))
                .toList();
        if (tyres.isEmpty()) {
            throw in.missing(in.subject(Scope.BIKE), Bike.LARGEST_TYRE, "no riders are in use; add a rider group");
        }
        return Worst.of(tyres);
    }

    private static Verdict room(Inputs in, String room, Subject subject) {
        Limit limit = new Limit(ROOMS.get(room), 0, Optional.empty(), "", Address.of(in.subject(Scope.BIKE), "id"));
        return limit.judge(in.ask(room, subject, Settings.NONE), in.band(room, subject, Settings.NONE), subject)
                .ofCriterion(room);
    }

    private static Answer fits(Inputs in) {
        List<Verdict> verdicts = new ArrayList<>();
        for (String check : checks(in)) {
            Answer answer = in.ask(FIT_CHECK, in.subject(), Settings.NONE.with(CHECK.name(), check));
            verdicts.add(
                    answer instanceof Verdict verdict
                            ? verdict
                            : Limit.missing(answer, in.subject()).ofCriterion(check));
        }
        return Worst.of(verdicts);
    }

    private static List<String> checks(Inputs in) {
        List<String> checks = new ArrayList<>(ROOM_ORDER);
        for (Series.At criterion : ((Series) in.ask(CRITERIA_ON_BIKES, Subject.NONE)).values()) {
            RecordId requirement = requirement(criterion.at()).orElseThrow();
            List<RecordId> bikes = in.get(requirement, Requirement.BIKES);
            if (bikes.isEmpty() || bikes.contains(in.subject(Scope.BIKE))) {
                checks.add(criterion.at());
            }
        }
        return checks;
    }

    static Optional<RecordId> requirement(String check) {
        int point = check.indexOf('.');
        return point < 0
                ? Optional.empty()
                : RecordId.parse(check.substring(0, point)).filter(id -> id.hasLetters(Scope.REQUIREMENT.letters()));
    }
}
