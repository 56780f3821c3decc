package groupwright.documents.project;

import groupwright.definition.assessment.FitMatrix.Check;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One check of a fit in the words of the document. */
record FitCheckText(Sheet sheet) {
    private static final String ZERO = "0";

    /** What is checked: the figure's name with its parameters. */
    String name(Check check) {
        Optional<Figure> figure = figure(check);
        String name = figure.map(sheet::name).orElse(check.name());
        return name
                + check.asked()
                        .map(asked -> sheet.parameters(asked.criterion().parameters()))
                        .orElse("");
    }

    /** The same inside a sentence; German writes nouns with a capital anywhere. */
    String nameInSentence(Check check) {
        String name = name(check);
        return sheet.reader().locale().getLanguage().equals("de")
                ? name
                : name.substring(0, 1).toLowerCase(sheet.reader().locale()) + name.substring(1);
    }

    private Optional<Figure> figure(Check check) {
        return sheet.view()
                .catalogue()
                .find(check.asked().map(asked -> asked.criterion().figure()).orElse(check.name()));
    }

    /** The requirement that asks for it; a dash for what must hold on any bike. */
    String requirement(Check check) {
        return check.asked().map(asked -> asked.requirement().id().text()).orElse(FieldText.NOTHING);
    }

    /** The limit with its unit; room must not be less than none, and what is better low not more. */
    String limit(Check check) {
        if (check.asked().isPresent()) {
            return sheet.targets().of(check.asked().get().criterion());
        }
        return figure(check)
                .map(figure -> sheet.text()
                        .measured(figure.unit())
                        .with(sheet.labels()
                                .text(
                                        figure.direction() == Direction.LOWER_IS_BETTER
                                                ? "target.atMost"
                                                : "target.atLeast",
                                        ZERO))
                        .text())
                .orElse(FieldText.NOTHING);
    }

    /**
     * Value and verdict; where an input is missing, the fields to fill.
     *
     * @param about the records that the row and column of the table are about
     */
    Phrase verdict(Check check, List<RecordId> about) {
        Verdict verdict = check.verdict();
        List<Inline> parts = new ArrayList<>();
        if (verdict.value() instanceof Quantity && check.measured().isPresent()) {
            parts.add(sheet.bare(check.measured().get()));
            parts.add(new Inline.Plain(" "));
        }
        parts.add(new Inline.Judged(Marks.verdict(verdict)));
        if (!verdict.missing().isEmpty()) {
            parts.add(new Inline.Plain(": " + missing(verdict, about)));
        }
        return new Phrase(parts);
    }

    /** Fields by their names, with the record before them where the table does not say which. */
    private String missing(Verdict verdict, List<RecordId> about) {
        MissingText text = new MissingText(sheet.labels());
        return verdict.missing().stream()
                .map(input -> (about.contains(input.address().record())
                                ? ""
                                : input.address().record() + " ")
                        + text.field(input.address()))
                .distinct()
                .collect(Collectors.joining(sheet.labels().text("list.separator")));
    }
}
