package groupwright.workbench.cli;

import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The records that figures are asked about.
 *
 * @param named by scope, only these; a scope that is not there or empty means all records in use
 */
record Selection(Map<Scope, List<RecordId>> named) {
    Selection {
        named = Map.copyOf(named);
    }

    /** The same with the records of a subject in place of others of their scopes. */
    Selection narrowedTo(Subject subject) {
        Map<Scope, List<RecordId>> narrowed = new EnumMap<>(Scope.class);
        narrowed.putAll(named);
        subject.scopes()
                .forEach(
                        scope -> narrowed.put(scope, subject.get(scope).stream().toList()));
        return new Selection(narrowed);
    }

    /** Every subject of these scopes, in the order of ids. */
    List<Subject> subjects(Iterable<Scope> scopes, Definition definition) {
        List<Subject> subjects = List.of(Subject.NONE);
        for (Scope scope : scopes) {
            List<Subject> crossed = new ArrayList<>();
            List<RecordId> records = of(scope, definition);
            subjects.forEach(subject -> records.forEach(record -> crossed.add(subject.with(record))));
            subjects = crossed;
        }
        return subjects;
    }

    private List<RecordId> of(Scope scope, Definition definition) {
        List<RecordId> chosen = named.getOrDefault(scope, List.of());
        return chosen.isEmpty() ? inUse(scope, definition) : chosen;
    }

    private static List<RecordId> inUse(Scope scope, Definition definition) {
        return RecordKinds.byLetters(scope.letters()).stream()
                .flatMap(kind -> definition.all(kind).stream())
                .filter(Selection::isInUse)
                .map(Entry::id)
                .toList();
    }

    private static boolean isInUse(Entry record) {
        return record.isCurrent() && !(record instanceof Concept concept && concept.state() == Concept.State.PARKED);
    }
}
