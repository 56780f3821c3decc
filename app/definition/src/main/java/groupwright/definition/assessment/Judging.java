package groupwright.definition.assessment;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
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
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Judges one criterion of a requirement for a concept, over the rider groups and bikes it is measured for. */
final class Judging {
    private final Inputs in;
    private final RecordId requirement;
    private final RecordId concept;
    private final String id;

    Judging(Inputs in, String criterion) {
        this.in = in;
        this.requirement = in.subject(Scope.REQUIREMENT);
        this.concept = in.subject(Scope.CONCEPT);
        this.id = criterion;
    }

    /**
     * The worst verdict.
     *
     * @param riders the only rider group to look at; nothing means all the requirement names
     */
    Verdict judge(Optional<RecordId> riders) {
        String name = field(Criterion.FIGURE);
        Optional<Figure> figure = in.catalogue().find(name);
        Subject asked = Subject.of(concept);
        if (figure.isEmpty()) {
            String hint = Nearest.of(
                            name, in.catalogue().all().stream().map(Figure::id).toList())
                    .map(near -> "; did you mean " + near + "?")
                    .orElse("; choose one");
            return missing("figure", "there is no figure \"" + name + "\"" + hint, asked)
                    .ofCriterion(id);
        }
        List<Verdict> verdicts = new ArrayList<>();
        for (Subject subject : subjects(figure.get().scopes(), riders)) {
            verdicts.add(judge(figure.get(), subject));
        }
        if (verdicts.isEmpty()) {
            return missing("figure", "there is no rider group or bike to measure it for; add one", asked)
                    .ofCriterion(id);
        }
        return Worst.of(verdicts).ofCriterion(id);
    }

    private Verdict judge(Figure figure, Subject subject) {
        Settings parameters = field(Criterion.PARAMETERS);
        try {
            return limit().judge(
                            in.ask(figure.id(), subject, parameters),
                            in.band(figure.id(), subject, parameters),
                            subject);
        } catch (Invalid invalid) { // parameters or subject do not fit the figure
            return missing("parameters", invalid.getMessage(), subject);
        }
    }

    private Limit limit() {
        return new Limit(
                field(Criterion.COMPARATOR),
                field(Criterion.TARGET).value(),
                field(Criterion.UPPER).map(Amount::value),
                field(Criterion.UNIT),
                Address.of(requirement, "criteria", id, "unit"));
    }

    private Verdict missing(String field, String remedy, Subject subject) {
        Address at = Address.of(requirement, "criteria", id, field);
        return Limit.missing(Missing.of(new MissingInput(at, remedy)), subject);
    }

    /** The subjects a figure of these scopes is asked about. */
    private List<Subject> subjects(Set<Scope> scopes, Optional<RecordId> riders) {
        Subject start = Subject.NONE;
        if (scopes.contains(Scope.CONCEPT)) {
            start = start.with(concept);
        }
        if (scopes.contains(Scope.REQUIREMENT)) {
            start = start.with(requirement);
        }
        List<Subject> subjects = List.of(start);
        if (scopes.contains(Scope.RIDERS)) {
            subjects = crossed(subjects, riders.map(List::of).orElseGet(this::allRiders));
        }
        if (scopes.contains(Scope.BIKE)) {
            subjects = crossed(subjects, allBikes());
        }
        return subjects;
    }

    private List<RecordId> allRiders() {
        List<RecordId> named = in.get(requirement, Requirement.RIDERS);
        return named.isEmpty() ? current(in.all(RecordKinds.RIDER_GROUP), RiderGroup.RETIRED) : named;
    }

    private List<RecordId> allBikes() {
        List<RecordId> named = in.get(requirement, Requirement.BIKES);
        return named.isEmpty() ? current(in.all(RecordKinds.BIKE), Bike.RETIRED) : named;
    }

    private <R extends Entry> List<RecordId> current(List<RecordId> ids, Field<R, String> retired) {
        return ids.stream().filter(one -> in.get(one, retired).isEmpty()).toList();
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
