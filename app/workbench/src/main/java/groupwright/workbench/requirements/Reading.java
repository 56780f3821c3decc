package groupwright.workbench.requirements;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.View;
import groupwright.definition.quality.Finding;
import groupwright.definition.quality.Measure;
import groupwright.definition.quality.Statement;
import groupwright.definition.quality.StatementChecks;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What all that is read of requirements in one view shares: questions, digits, words. */
final class Reading {
    private final View view;
    private final Assessment assessment;
    private final Reader reader;
    private final AnswerText answers;
    private final TargetText targets;
    private final Words words;
    private final StatementChecks checks;

    Reading(View view, StatementChecks checks, Locale locale) {
        this.view = view;
        this.assessment = new Assessment(view);
        this.reader = new Reader(locale);
        this.answers = new AnswerText(reader);
        this.targets = new TargetText(reader, Labels.of(locale));
        this.words = Words.of(Reading.class, locale);
        this.checks = checks;
    }

    View view() {
        return view;
    }

    Definition definition() {
        return view.definition();
    }

    Assessment assessment() {
        return assessment;
    }

    Reader reader() {
        return reader;
    }

    AnswerText answers() {
        return answers;
    }

    TargetText targets() {
        return targets;
    }

    StatementChecks checks() {
        return checks;
    }

    Locale locale() {
        return reader.locale();
    }

    String text(String key, Object... parts) {
        return words.text(key, parts);
    }

    /** What makes a statement hard to verify. Linear in its length. */
    List<Finding> findings(Requirement requirement) {
        return checks.check(new Statement(
                requirement.statement(), requirement.criteria().isEmpty() ? Measure.NONE : Measure.GIVEN));
    }

    /** A number with the decimals its figure holds and some more. */
    String number(String figure, double value, int more) {
        int decimals =
                view.catalogue().find(figure).map(found -> found.decimals()).orElse(2);
        return reader.number(value, Math.min(6, decimals + more));
    }

    /** The number of an answer without its remark. */
    ShownValue shown(String figure, Quantity quantity) {
        return new ShownValue(
                number(figure, quantity.value(), 0), quantity.unit().symbol());
    }

    /** The same with what must be known beside it. */
    String told(String figure, Quantity quantity) {
        String value = shown(figure, quantity).text();
        return quantity.remark().isEmpty() ? value : value + ", " + remark(quantity.remark());
    }

    private String remark(String remark) {
        String[] pair = remark.split("-");
        return remark.matches("[0-9]+-[0-9]+") ? text("remark.pair", pair[0], pair[1]) : remark;
    }

    /** Ids in one text, for example {@code G-001 and G-002}. */
    String listed(List<RecordId> ids) {
        List<String> texts = ids.stream().map(RecordId::text).toList();
        return texts.size() == 1
                ? texts.get(0)
                : text("list.and", String.join(", ", texts.subList(0, texts.size() - 1)), texts.get(texts.size() - 1));
    }

    /** All requirements with how they stand. O(criteria), and the ledger keeps the answers. */
    RequirementsSheet sheet() {
        Optional<RecordId> lead = assessment.lead();
        ListedReading rows = new ListedReading(this, lead);
        List<Listed> listed =
                definition().all(RecordKinds.REQUIREMENT).stream().map(rows::of).toList();
        return new RequirementsSheet(
                summary(lead),
                lead,
                listed,
                assessment.riderGroups().stream()
                        .map(group -> new RequirementsSheet.Group(group.id(), group.id() + " " + group.title()))
                        .toList());
    }

    private String summary(Optional<RecordId> lead) {
        String count = Integer.toString(assessment.requirements().size());
        String project = definition().project().name();
        return lead.map(id -> text("summary", count, project, id.text()))
                .orElseGet(() -> text("summary.noLead", count, project));
    }

    /** How many requirements in use do not meet for certain; parked ones are left out. O(requirements). */
    static int open(View view) {
        Assessment assessment = new Assessment(view);
        return assessment
                .lead()
                .map(lead -> (int) assessment.requirements().stream()
                        .filter(requirement -> requirement.state() != Requirement.State.PARKED)
                        .filter(requirement ->
                                !assessment.verdict(requirement.id(), lead).meetsForCertain())
                        .count())
                .orElse(0);
    }
}
