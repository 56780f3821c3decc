package groupwright.documents.numbers;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.figures.FigureNames;
import groupwright.definition.record.Amount;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers, bands and inputs in the words and digits of one reader. */
public final class AnswerText {
    private final Reader reader;
    private final Labels labels;
    private final FigureNames names;

    public AnswerText(Reader reader) {
        this.reader = reader;
        this.labels = Labels.of(reader.locale());
        this.names = FigureNames.in(reader.locale());
    }

    /** A figure's name. */
    public String name(Figure figure) {
        return names.of(figure);
    }

    /** What a figure neglects. */
    public String leavesOut(Figure figure) {
        return names.leavesOut(figure);
    }

    /** A parameter's name in words. */
    public String parameter(String name) {
        String key = "parameter." + name;
        return labels.has(key) ? labels.text(key) : name.replace('-', ' ');
    }

    /** An answer with as many decimals as its figure holds. */
    public ShownValue of(Ask ask, Answer answer) {
        return of(ask.figure(), answer);
    }

    /** See {@link #of(Ask, Answer)}. */
    public ShownValue of(Figure figure, Answer answer) {
        if (answer instanceof Quantity quantity) {
            return quantity(figure, quantity);
        } else if (answer instanceof Series series) {
            Measured measured = reader.in(series.unit().symbol());
            return measured.with(series(figure, series, measured));
        } else if (answer instanceof Verdict verdict) {
            return ShownValue.of(labels.text(key(verdict)));
        } else if (answer instanceof Word word) {
            return ShownValue.of(word(word.word()));
        }
        return ShownValue.of(labels.text("value.missing"));
    }

    private ShownValue quantity(Figure figure, Quantity quantity) {
        Measured measured = reader.in(quantity.unit().symbol());
        String remark = quantity.remark().isEmpty() ? "" : " (" + Remarks.of(quantity.remark(), labels) + ")";
        return new ShownValue(measured.number(quantity.value(), figure.decimals()), measured.unit() + remark);
    }

    private static String key(Verdict verdict) {
        boolean close = verdict.certainty() == Verdict.Certainty.TOO_CLOSE_TO_CALL;
        return switch (verdict.outcome()) {
            case MISSING_INPUT -> "verdict.missing";
            case MEETS -> close ? "verdict.meetsClose" : "verdict.meets";
            case MISSES -> close ? "verdict.missesClose" : "verdict.misses";
        };
    }

    private String word(String word) {
        String key = "claim." + word.toUpperCase(Locale.ROOT).replace(' ', '_');
        return labels.has(key) ? labels.text(key) : word;
    }

    private String series(Figure figure, Series series, Measured measured) {
        if (series.values().isEmpty()) {
            return labels.text("value.none");
        }
        return series.values().stream()
                .map(at -> position(at.at()) + ": " + measured.number(at.value(), figure.decimals()))
                .collect(Collectors.joining(", "));
    }

    /** Pairs of cogs and gears are the same in all languages, rungs of the ladder are words. */
    private String position(String at) {
        String key = "rung." + at;
        return labels.has(key) ? labels.text(key) : at;
    }

    /** How the reader sees numbers of a unit. */
    public Measured measured(Unit unit) {
        return reader.in(unit.symbol());
    }

    /** Why there is no answer: each missing input with its remedy, in one sentence. */
    public String missing(Missing missing) {
        return missing.inputs().stream()
                .map(input -> input.address() + ": " + input.remedy())
                .collect(Collectors.joining("; "));
    }

    /** How well an answer is known, in words, for a figure whose answers have the unit it states. */
    public String of(Figure figure, Band band) {
        return of(figure, figure.unit(), band);
    }

    /** How well an answer in some unit is known, in words without that unit. */
    public String of(Figure figure, Unit unit, Band band) {
        if (band instanceof Band.Between between) {
            Measured measured = reader.in(unit.symbol());
            int decimals = figure.decimals() + 1;
            return labels.text(
                    "band.between",
                    measured.number(between.low(), decimals),
                    measured.number(between.high(), decimals));
        }
        return labels.text(band instanceof Band.Exact ? "band.exact" : "band.notStated");
    }

    /** A value of a record as it is kept there, whatever measures the reader wants; only words are the reader's. */
    public ShownValue input(Object value, String unit) {
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> input(inner, unit)).orElse(ShownValue.of(labels.text("value.notGiven")));
        } else if (value instanceof Amount amount) {
            String text = reader.exact(amount.value());
            return shown(amount.isBanded() ? text + " ± " + reader.exact(amount.plusMinus()) : text, unit);
        } else if (value instanceof List<?> list) {
            String text =
                    list.stream().map(element -> input(element, "").value()).collect(Collectors.joining(" "));
            return text.isEmpty() ? ShownValue.of(labels.text("value.none")) : shown(text, unit);
        }
        String text = groupwright.definition.ledger.ValueText.of(value);
        return text.isEmpty() ? ShownValue.of(labels.text("value.none")) : shown(text, unit);
    }

    private ShownValue shown(String text, String unit) {
        return new ShownValue(text, UnitWords.of(unit, labels));
    }
}
