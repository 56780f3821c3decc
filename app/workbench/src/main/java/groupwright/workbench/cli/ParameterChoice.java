package groupwright.workbench.cli;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Climb;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.definition.record.TestResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Values of parameters that must be given, where the subject itself lists them: climbs, quantities tested. */
final class ParameterChoice {
    private ParameterChoice() {}

    /** The given parameters, once for each value that a missing one can have; parameters nobody lists stay missing. */
    static List<Settings> of(Definition definition, Figure figure, Subject subject, Settings given) {
        List<Settings> all = List.of(given);
        for (Parameter parameter : figure.parameters()) {
            if (parameter.presence() == Parameter.Presence.REQUIRED
                    && given.get(parameter.name()).isEmpty()) {
                Optional<List<String>> values = values(definition, parameter.name(), subject);
                if (values.isPresent()) {
                    all = crossed(all, parameter.name(), values.get());
                }
            }
        }
        return all;
    }

    private static List<Settings> crossed(List<Settings> all, String name, List<String> values) {
        List<Settings> crossed = new ArrayList<>();
        all.forEach(settings -> values.forEach(value -> crossed.add(settings.with(name, value))));
        return crossed;
    }

    private static Optional<List<String>> values(Definition definition, String parameter, Subject subject) {
        if (parameter.equals("climb") && subject.has(Scope.RIDERS)) {
            return Optional.of(subject.get(Scope.RIDERS).flatMap(id -> definition.get(id, RiderGroup.class)).stream()
                    .flatMap(group -> group.climbs().stream())
                    .map(Climb::id)
                    .toList());
        } else if (parameter.equals("quantity") && subject.has(Scope.REQUIREMENT) && subject.has(Scope.CONCEPT)) {
            RecordId concept = subject.get(Scope.CONCEPT).orElseThrow();
            return Optional.of(results(definition, subject)
                    .filter(result -> result.concept().equals(concept))
                    .map(TestResult::quantity)
                    .distinct()
                    .sorted()
                    .toList());
        }
        return Optional.empty();
    }

    private static Stream<TestResult> results(Definition definition, Subject subject) {
        return subject.get(Scope.REQUIREMENT).flatMap(id -> definition.get(id, Requirement.class)).stream()
                .flatMap(requirement -> requirement.results().stream());
    }
}
