package groupwright.definition.assessment;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Nearest;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Judges one criterion of a requirement for a concept, over the rider groups and bikes it is measured for. */
final class Judging {
    private static final Set<Scope> MEASURED = EnumSet.of(Scope.CONCEPT, Scope.REQUIREMENT, Scope.RIDERS, Scope.BIKE);

    private final Inputs in;
    private final RecordId requirement;
    private final RecordId concept;
    private final String id;

    Judging(Inputs in, String criterion) {
        this(in, in.subject(Scope.REQUIREMENT), criterion);
    }

    Judging(Inputs in, RecordId requirement, String criterion) {
        this.in = in;
        this.requirement = requirement;
        this.concept = in.subject(Scope.CONCEPT);
        this.id = criterion;
    }

    /**
     * The worst verdict.
     *
     * @param riders the only rider group to look at; nothing means all the requirement names
     */
    Verdict judge(Optional<RecordId> riders) {
        return judge(riders, Optional.empty());
    }

    /** The worst verdict on one bike, over the rider groups the requirement names. */
    Verdict judgeOn(RecordId bike) {
        return judge(Optional.empty(), Optional.of(bike));
    }

    private Verdict judge(Optional<RecordId> riders, Optional<RecordId> bike) {
        String name = field(Criterion.FIGURE);
        try {
            Figure figure = in.catalogue().find(name).orElseThrow(() -> unknown(name));
            checkMeasures(figure);
            List<Verdict> verdicts = new ArrayList<>();
            for (Subject subject : subjects(figure.scopes(), riders, bike)) {
                verdicts.add(judge(figure, subject));
            }
            if (verdicts.isEmpty()) {
                throw new Invalid("", "there is no rider group or bike to measure it for", "add one");
            }
            return Worst.of(verdicts).ofCriterion(id);
        } catch (Invalid invalid) { // the requirement names something that cannot be measured
            Address at =
                    invalid.field().isEmpty() ? criterion().child("figure") : Address.of(requirement, invalid.field());
            return missing(at, invalid.wrong() + "; " + invalid.remedy(), Subject.of(concept))
                    .ofCriterion(id);
        }
    }

    private Invalid unknown(String name) {
        return new Invalid(
                "",
                "there is no figure \"" + name + "\"",
                Nearest.of(name, in.catalogue().all().stream().map(Figure::id).toList())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("choose one"));
    }

    /** A criterion measures the product; a verdict on verdicts would have no bottom. */
    private static void checkMeasures(Figure figure) {
        if (figure.level() != Level.CALCULUS) {
            throw new Invalid("", figure.id() + " speaks of the project, not the product", "choose another figure");
        } else if (!MEASURED.containsAll(figure.scopes())) {
            throw new Invalid(
                    "", figure.id() + " is about one record, not the concept", "choose a figure about concepts");
        }
    }

    private Verdict judge(Figure figure, Subject subject) {
        Settings parameters = field(Criterion.PARAMETERS);
        try {
            return limit().judge(
                            in.ask(figure.id(), subject, parameters),
                            in.band(figure.id(), subject, parameters),
                            subject);
        } catch (Invalid invalid) { // parameters or subject do not fit the figure
            return missing(criterion().child("parameters"), invalid.getMessage(), subject);
        }
    }

    private Limit limit() {
        return new Limit(
                field(Criterion.COMPARATOR),
                field(Criterion.TARGET).value(),
                field(Criterion.UPPER).map(Amount::value),
                field(Criterion.UNIT),
                criterion());
    }

    private Address criterion() {
        return Address.of(requirement, "criteria", id);
    }

    private static Verdict missing(Address at, String remedy, Subject subject) {
        return Limit.missing(Missing.of(new MissingInput(at, remedy)), subject);
    }

    /** The subjects a figure of these scopes is asked about. */
    private List<Subject> subjects(Set<Scope> scopes, Optional<RecordId> riders, Optional<RecordId> bike) {
        Subject start = Subject.NONE;
        if (scopes.contains(Scope.CONCEPT)) {
            start = start.with(concept);
        }
        if (scopes.contains(Scope.REQUIREMENT)) {
            start = start.with(requirement);
        }
        List<Subject> subjects = List.of(start);
        if (scopes.contains(Scope.RIDERS)) {
            subjects = crossed(subjects, riders.map(List::of).orElseGet(this::riders));
        }
        if (scopes.contains(Scope.BIKE)) {
            subjects = crossed(subjects, bike.map(List::of).orElseGet(this::bikes));
        }
        return subjects;
    }

    private List<RecordId> riders() {
        return current(Requirement.RIDERS, RecordKinds.RIDER_GROUP, RiderGroup.RETIRED);
    }

    private List<RecordId> bikes() {
        return current(Requirement.BIKES, RecordKinds.BIKE, Bike.RETIRED);
    }

    /** Those the requirement names, or all there are, without the retired ones. */
    private <R extends Entry> List<RecordId> current(
            Field<Requirement, List<RecordId>> names, RecordKind<R> kind, Field<R, String> retired) {
        List<RecordId> named = in.get(requirement, names);
        for (RecordId one : named) {
            if (!one.letters().equals(kind.letters())) {
                throw new Invalid(
                        names.path().get(0), one + " is no " + kind.noun(), "name one like " + kind.letters() + "-001");
            }
        }
        return (named.isEmpty() ? in.all(kind) : named)
                .stream()
                        .filter(one -> !in.exists(one) || in.get(one, retired).isEmpty()) // one not there is missing
                        .toList();
    }

    private static List<Subject> crossed(List<Subject> subjects, List<RecordId> with) {
        List<Subject> all = new ArrayList<>();
        for (Subject subject : subjects) {
            with.forEach(one -> all.add(subject.with(one)));
        }
        return all;
    }

    private <T> T field(Field<Criterion, T> field) {
        return in.item(requirement, Requirement.CRITERIA, id, field)
                .orElseThrow(() -> in.missing(requirement, Requirement.CRITERIA, "there is no criterion " + id));
    }
}
