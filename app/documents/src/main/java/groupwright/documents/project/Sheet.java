package groupwright.documents.project;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Nearest;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import java.util.List;
import java.util.Optional;

/** What blocks work with: the ledger's view and the words and digits of one reader. */
record Sheet(
        View view,
        Assessment assessment,
        Traces traces,
        AnswerText text,
        Reader reader,
        Labels labels,
        TargetText targets,
        BikeChoice chosen) {
    /** More records of a kind are named by the first and the last. */
    private static final int MOST_NAMED = 8;

    Definition definition() {
        return view.definition();
    }

    /** The bikes the document speaks of. */
    List<Bike> bikes() {
        return chosen.bikes(definition());
    }

    /** Charts of the concepts' gears. */
    ConceptCharts charts() {
        return new ConceptCharts(view, reader);
    }

    /**
     * The lead concept.
     *
     * @throws NoLead if the project names none
     */
    RecordId lead() {
        return assessment.lead().orElseThrow(NoLead::new);
    }

    /** The project names no lead concept yet: no mistake of the template, and said in the document. */
    static final class NoLead extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** A question in the figure grammar about records there are. */
    Ask ask(String question) {
        Ask ask = FigureText.parse(question).resolve(view.catalogue(), assessment.lead());
        ask.subject().ids().forEach(this::existing);
        return ask;
    }

    /**
     * The record with an id.
     *
     * @throws Invalid if there is none; says which there are
     */
    Entry existing(RecordId id) {
        return definition().get(id).orElseThrow(() -> unknown(id));
    }

    private Invalid unknown(RecordId id) {
        Optional<RecordKind<?>> kind = RecordKinds.byLetters(id.letters());
        if (kind.isEmpty()) {
            return new Invalid("", "no kind of record has ids like " + id, "write for example C-001");
        }
        List<String> ids = definition().all(kind.get()).stream()
                .map(record -> record.id().text())
                .toList();
        String remedy = ids.isEmpty()
                ? "add one first"
                : ids.size() <= MOST_NAMED
                        ? "name one of " + String.join(", ", ids)
                        : Nearest.of(id.text(), ids)
                                        .map(near -> "did you mean " + near + ", or another of ")
                                        .orElse("name one of ")
                                + ids.get(0) + " to " + ids.get(ids.size() - 1);
        return new Invalid("", "there is no " + kind.get().noun() + " " + id, remedy);
    }

    /** A figure's name as people say it. */
    String name(Figure figure) {
        return text.name(figure);
    }

    /** Parameters in words behind a figure's name, for example ", from teeth 14"; empty for none. */
    String parameters(Settings parameters) {
        StringBuilder words = new StringBuilder();
        parameters
                .values()
                .forEach((name, value) -> words.append(", ")
                        .append(text.parameter(name))
                        .append(' ')
                        .append(value));
        return words.toString();
    }

    /** Says that there is nothing to show, where a table would be all head. */
    BlockAnswer nothing() {
        return new BlockAnswer.Paragraph(Phrase.of(labels.text("nothing.toShow")));
    }

    /** Whether the catalogue has a figure. */
    boolean knows(String figure) {
        return view.catalogue().find(figure).isPresent();
    }

    /** A number with its unit and its entry. */
    Inline live(Ask ask) {
        return Inline.Live.of(traces.entry(ask));
    }

    /** A number without its unit, for columns whose head states it. */
    Inline bare(Ask ask) {
        TraceEntry entry = traces.entry(ask);
        return new Inline.Live(ShownValue.of(entry.shown().value()), entry);
    }

    /** The answer as a plain number, if it is one. */
    Optional<Double> number(Ask ask) {
        Answer answer = view.ask(ask);
        return answer instanceof Quantity quantity ? Optional.of(quantity.value()) : Optional.empty();
    }

    Phrase plain(String words) {
        return Phrase.of(words.isEmpty() ? "—" : words);
    }

    /** A need in the riders' words, in quotation marks of the reader's language. */
    String quoted(Need need) {
        return labels.text("needs.quoted", need.words());
    }

    Column textColumn(String key) {
        return Column.text(labels.text(key));
    }

    Column numberColumn(String key) {
        return Column.number(labels.text(key));
    }

    /** A column whose head states the unit of its numbers. */
    Column numberColumn(String key, String unit) {
        return Column.number(labels.text(key, reader.in(unit).unit()));
    }
}
