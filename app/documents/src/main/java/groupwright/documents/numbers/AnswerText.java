package groupwright.documents.numbers;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Amount;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers, bands and inputs in the words and digits of one reader. */
public final class AnswerText {
    private final Reader reader;
    private final Labels labels;

    public AnswerText(Reader reader) {
        this.reader = reader;
        this.labels = Labels.of(reader.locale());
    }

    /** An answer with as many decimals as its figure holds. */
    public ShownValue of(Ask ask, Answer answer) {
        return of(ask.figure(), answer);
    }

    /** See {@link #of(Ask, Answer)}. */
    public ShownValue of(Figure figure, Answer answer) {
        if (answer instanceof Quantity quantity) {
            String remark = quantity.remark().isEmpty() ? "" : " (" + quantity.remark() + ")";
            return new ShownValue(
                    reader.number(quantity.value(), figure.decimals()),
                    quantity.unit().symbol() + remark);
        } else if (answer instanceof Series series) {
            return new ShownValue(series(figure, series), series.unit().symbol());
        } else if (answer instanceof Verdict verdict) {
            return ShownValue.of(verdict.words());
        } else if (answer instanceof Word word) {
            return ShownValue.of(word.word());
        }
        return ShownValue.of(labels.text("value.missing"));
    }

    private String series(Figure figure, Series series) {
        if (series.values().isEmpty()) {
            return labels.text("value.none");
        }
        return series.values().stream()
                .map(at -> at.at() + ": " + reader.number(at.value(), figure.decimals()))
                .collect(Collectors.joining(", "));
    }

    /** Why there is no answer: each missing input with its remedy, in one sentence. */
    public String missing(Missing missing) {
        return missing.inputs().stream()
                .map(input -> input.address() + ": " + input.remedy())
                .collect(Collectors.joining("; "));
    }

    /** How well an answer is known, in words. */
    public String of(Figure figure, Band band) {
        if (band instanceof Band.Between between) {
            int decimals = figure.decimals() + 1;
            return labels.text(
                    "band.between", reader.number(between.low(), decimals), reader.number(between.high(), decimals));
        }
        return labels.text(band instanceof Band.Exact ? "band.exact" : "band.notStated");
    }

    /** A value of a record as it went in. */
    public ShownValue input(Object value, String unit) {
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> input(inner, unit)).orElse(ShownValue.of(labels.text("value.notGiven")));
        } else if (value instanceof Amount amount) {
            String text = reader.exact(amount.value());
            return new ShownValue(amount.isBanded() ? text + " ± " + reader.exact(amount.plusMinus()) : text, unit);
        } else if (value instanceof List<?> list) {
            String text =
                    list.stream().map(element -> input(element, "").value()).collect(Collectors.joining(" "));
            return text.isEmpty() ? ShownValue.of(labels.text("value.none")) : new ShownValue(text, unit);
        }
        String text = groupwright.definition.ledger.ValueText.of(value);
        return text.isEmpty() ? ShownValue.of(labels.text("value.none")) : new ShownValue(text, unit);
    }
}
