package groupwright.workbench.requirements;

import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.TestResult;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads one requirement in full. */
final class DetailReading {
    private static final int NAMED = 2;

    private final Reading reading;
    private final Optional<RecordId> lead;
    private final RowReading rows;

    DetailReading(Reading reading) {
        this.reading = reading;
        this.lead = reading.assessment().lead();
        this.rows = new RowReading(reading, lead);
    }

    /** The requirement; nothing where there is none. */
    Optional<Detail> of(RecordId id) {
        return reading.definition().get(id, Requirement.class).map(this::of);
    }

    private Detail of(Requirement requirement) {
        return new Detail(
                requirement.id(),
                requirement.title(),
                requirement.statement(),
                reading.findings(requirement).stream()
                        .map(finding -> new Detail.Advice(reading.checks().title(finding.check()), finding))
                        .toList(),
                requirement.rationale(),
                requirement.answers().stream().map(this::need).toList(),
                about(requirement),
                new ListedReading(reading, lead).ladder(requirement),
                reached(requirement),
                new NextStep(reading, lead).of(requirement),
                new Relaxing(reading, lead).of(requirement),
                Detail.Standing.of(requirement));
    }

    private Detail.Link need(RecordId id) {
        String words = reading.definition()
                .get(id, Need.class)
                .map(need -> "“" + need.words() + "”")
                .orElse("");
        return new Detail.Link(id.text(), words, Address.of(id));
    }

    private String about(Requirement requirement) {
        String groups = requirement.riders().isEmpty()
                ? reading.text("about.allRiders")
                : reading.text("about.riders", reading.listed(requirement.riders()));
        List<String> parts =
                new ArrayList<>(List.of(groups, reading.text("about.weight", Integer.toString(requirement.weight()))));
        if (!requirement.bikes().isEmpty()) {
            parts.add(1, reading.text("about.bikes", reading.listed(requirement.bikes())));
        }
        if (!requirement.owner().isEmpty()) {
            parts.add(reading.text("about.owner", requirement.owner()));
        }
        if (requirement.riderSafety() == Requirement.RiderSafety.YES) {
            parts.add(reading.text("about.safety"));
        }
        return String.join(", ", parts);
    }

    private Map<Rung, String> reached(Requirement requirement) {
        Map<Rung, String> reached = new EnumMap<>(Rung.class);
        reached.put(Rung.STATED, stated(requirement));
        reached.put(Rung.MEASURABLE, measurable(requirement));
        reached.put(Rung.CALCULATED, calculated(requirement));
        reached.put(Rung.TESTED, tested(requirement));
        return reached;
    }

    private String stated(Requirement requirement) {
        String state = reading.text("state." + requirement.state().name());
        return requirement.owner().isEmpty() ? state : requirement.owner() + ", " + state;
    }

    private String measurable(Requirement requirement) {
        List<String> criteria = requirement.criteria().stream()
                .limit(NAMED)
                .map(criterion ->
                        rows.name(criterion) + ", " + reading.targets().of(criterion))
                .toList();
        return joined(criteria, requirement.criteria().size(), "reached.noFigure");
    }

    private String joined(List<String> first, int all, String none) {
        if (first.isEmpty()) {
            return reading.text(none);
        }
        String text = String.join("; ", first);
        return all <= first.size() ? text : reading.text("reached.more", text, Integer.toString(all - first.size()));
    }

    private String calculated(Requirement requirement) {
        if (lead.isEmpty()) {
            return reading.text("reached.noLead");
        }
        List<String> values = requirement.criteria().stream()
                .limit(NAMED)
                .map(criterion -> value(requirement, criterion))
                .toList();
        return joined(values, requirement.criteria().size(), "reached.nothing");
    }

    private String value(Requirement requirement, Criterion criterion) {
        Verdict verdict = reading.assessment().verdict(requirement.id(), lead.orElseThrow(), criterion);
        if (!(verdict.value() instanceof Quantity quantity)) {
            return reading.text("reached.missing");
        }
        String value = reading.told(criterion.figure(), quantity);
        String at = verdict.at().ids().stream()
                .filter(id -> id.hasLetters("G") || id.hasLetters("B"))
                .map(RecordId::text)
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return at.isEmpty() ? value : reading.text("reached.for", value, at);
    }

    private String tested(Requirement requirement) {
        List<TestResult> results = requirement.results().stream()
                .filter(result -> lead.filter(result.concept()::equals).isPresent())
                .toList();
        List<String> shown = results.stream().limit(NAMED).map(this::result).toList();
        String none = requirement.verification() == Requirement.Verification.ANALYSIS
                ? "reached.byAnalysis"
                : "reached.noResult." + requirement.verification().name().toLowerCase(Locale.ROOT);
        return joined(shown, results.size(), none);
    }

    private String result(TestResult result) {
        String value = new groupwright.documents.trace.ShownValue(
                        reading.reader().exact(result.value().value()), result.unit())
                .text();
        List<String> parts = new ArrayList<>(List.of(value));
        result.date().ifPresent(date -> parts.add(reading.reader().day(date)));
        if (result.sample() > 0) {
            parts.add(reading.text("reached.sample", Integer.toString(result.sample())));
        }
        return String.join(", ", parts);
    }
}
