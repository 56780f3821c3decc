package groupwright.workbench.find;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The questions one may look for: each figure about the product, with usual parameters and with those criteria give. */
final class FindableFigures {
    private static final Set<Scope> MEASURED = EnumSet.of(Scope.CONCEPT, Scope.RIDERS, Scope.BIKE);

    private final Definition definition;
    private final Set<Ask> found = new LinkedHashSet<>();

    private FindableFigures(Definition definition) {
        this.definition = definition;
    }

    /** O(figures × concepts × the larger of rider groups and bikes). */
    static List<Ask> of(Definition definition, Catalogue catalogue) {
        FindableFigures figures = new FindableFigures(definition);
        for (Figure figure : catalogue.all()) {
            if (figure.level() == Level.CALCULUS && MEASURED.containsAll(figure.scopes())) {
                figures.add(figure, Settings.NONE);
            }
        }
        for (Requirement requirement : definition.all(RecordKinds.REQUIREMENT)) {
            for (Criterion criterion : requirement.criteria()) {
                catalogue
                        .find(criterion.figure())
                        .filter(figure -> figure.level() == Level.CALCULUS && MEASURED.containsAll(figure.scopes()))
                        .ifPresent(figure -> figures.add(figure, criterion.parameters()));
            }
        }
        return List.copyOf(figures.found);
    }

    private void add(Figure figure, Settings parameters) {
        List<Subject> subjects = List.of(Subject.NONE);
        subjects = crossed(figure, Scope.CONCEPT, RecordKinds.CONCEPT, subjects);
        subjects = crossed(figure, Scope.RIDERS, RecordKinds.RIDER_GROUP, subjects);
        subjects = crossed(figure, Scope.BIKE, RecordKinds.BIKE, subjects);
        for (Subject subject : subjects) {
            try {
                found.add(new Ask(figure, subject, parameters));
            } catch (Invalid needsParameters) {
                return; // cannot be asked without, and a criterion that gives them is looked at too
            }
        }
    }

    private <R extends Entry> List<Subject> crossed(
            Figure figure, Scope scope, RecordKind<R> kind, List<Subject> subjects) {
        if (!figure.scopes().contains(scope)) {
            return subjects;
        }
        List<RecordId> ids = definition.all(kind).stream()
                .filter(Entry::isCurrent)
                .map(Entry::id)
                .toList();
        List<Subject> all = new ArrayList<>();
        for (Subject subject : subjects) {
            ids.forEach(id -> all.add(subject.with(id)));
        }
        return all;
    }
}
