package groupwright.workbench.concepts;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Climb;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a criterion asks about besides the concept, in few words: {@code G-002, 12 %}. */
final class WhereText {
    private final View view;
    private final Reader reader;
    private final Words words;

    WhereText(View view, Reader reader, Words words) {
        this.view = view;
        this.reader = reader;
        this.words = words;
    }

    String of(Requirement requirement, Criterion criterion, Optional<Figure> figure) {
        Set<Scope> scopes = figure.map(Figure::scopes).orElse(Set.of());
        List<String> parts = new ArrayList<>();
        if (scopes.contains(Scope.RIDERS)) {
            parts.add(named(requirement.riders(), "where.riders"));
        }
        if (scopes.contains(Scope.BIKE)) {
            parts.add(named(requirement.bikes(), "where.bikes"));
        }
        criterion.parameters().values().entrySet().stream()
                .map(given -> parameter(given, requirement))
                .forEach(parts::add);
        return String.join(", ", parts);
    }

    private String named(List<RecordId> records, String key) {
        return switch (records.size()) {
            case 0 -> words.text(key);
            case 1 -> records.get(0).text();
            default ->
                words.text("where.worst", records.stream().map(RecordId::text).collect(Collectors.joining(", ")));
        };
    }

    private String parameter(Map.Entry<String, String> given, Requirement requirement) {
        String value = given.getValue().replace('-', ' ');
        return switch (given.getKey()) {
            case "from-teeth" -> words.text("where.fromTeeth", value);
            case "cadence" -> words.text("where.cadence", value);
            case "climb" ->
                grade(given.getValue(), requirement.riders())
                        .map(pct -> words.text("where.grade", reader.exact(pct)))
                        .orElse(value);
            case "quantity" -> value;
            default -> given.getKey().replace('-', ' ') + " " + value;
        };
    }

    /** The grade of a climb, where all rider groups that have it agree on it. */
    private Optional<Double> grade(String climb, List<RecordId> riders) {
        List<Double> grades = riders.stream()
                .flatMap(id -> view.definition().get(id, RiderGroup.class).stream())
                .flatMap(group -> group.climbs().stream())
                .filter(known -> known.id().equals(climb))
                .map(Climb::grade_pct)
                .map(grade -> grade.value())
                .distinct()
                .toList();
        return grades.size() == 1 ? Optional.of(grades.get(0)) : Optional.empty();
    }
}
