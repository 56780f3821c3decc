package groupwright.documents.tree;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measures;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a document says about itself. Nothing here comes from a clock.
 *
 * @param title name of the document, for example {@code Specification}
 * @param project name of the project
 * @param company who issues it
 * @param leadConcept the lead concept in words; empty if there is none
 * @param state for example {@code draft 7 since milestone M-002}; may be empty
 * @param date day of issue
 * @param shownDate the same day as the reader writes it
 * @param contentHash hash of the project the document was made from
 * @param locale language of the fixed words
 * @param measures units of the computed numbers
 * @param only what the document is narrowed to, for example {@code B-004 Steel tourer}; empty if it speaks of all
 */
public record Issue(
        String title,
        String project,
        String company,
        String leadConcept,
        String state,
        LocalDate date,
        String shownDate,
        String contentHash,
        Locale locale,
        Measures measures,
        String only) {
    public Issue {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(company, "company");
        Objects.requireNonNull(leadConcept, "leadConcept");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(shownDate, "shownDate");
        Objects.requireNonNull(contentHash, "contentHash");
        Objects.requireNonNull(locale, "locale");
        Objects.requireNonNull(measures, "measures");
        Objects.requireNonNull(only, "only");
        if (title.isBlank()) {
            throw new IllegalArgumentException("a document needs a title");
        }
    }

    /** A document in metric measures that speaks of all. */
    public Issue(
            String title,
            String project,
            String company,
            String leadConcept,
            String state,
            LocalDate date,
            String shownDate,
            String contentHash,
            Locale locale) {
        this(title, project, company, leadConcept, state, date, shownDate, contentHash, locale, Measures.METRIC, "");
    }

    /** One line of the title block. */
    public record Fact(String label, String value) {}

    /** The lines of the title block, those without a value left out. */
    public List<Fact> facts(Labels labels) {
        return Stream.of(
                        new Fact(labels.text("title.project"), project),
                        new Fact(labels.text("title.only"), only),
                        new Fact(labels.text("title.leadConcept"), leadConcept),
                        new Fact(labels.text("title.company"), company),
                        new Fact(labels.text("title.date"), shownDate),
                        new Fact(labels.text("title.state"), state),
                        new Fact(labels.text("title.contentHash"), contentHash))
                .filter(fact -> !fact.value().isBlank())
                .toList();
    }
}
