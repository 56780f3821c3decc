package groupwright.workbench.notation;

import groupwright.definition.figure.Parameter;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Component;
import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.MissingResourceException;

/** What is said about fields: labels, limits, examples and refusals, as whole sentences in the words of the trade. */
public final class FieldWords {
    private final Words texts;
    private final Reader reader;

    public FieldWords(Locale locale) {
        this.texts = Words.of(FieldWords.class, locale);
        this.reader = new Reader(locale);
    }

    Locale locale() {
        return reader.locale();
    }

    /** A field's name in sentence case, without its unit. */
    public static String label(Component component) {
        return sentenceCase(FieldLabel.of(component.name()));
    }

    /** With a capital in front. */
    public static String sentenceCase(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** One of the words a choice allows. */
    public static String word(Enum<?> constant) {
        return sentenceCase(ValueText.word(constant).replace('-', ' '));
    }

    /** What a field holds, with its limits, for tooltips and screen readers. */
    public String help(Component component) {
        String limits = limits(component);
        return limits.isEmpty() ? component.help() : component.help() + ". " + sentenceCase(limits) + ".";
    }

    /** The limits of a number, for example {@code 20 to 250 kg}; empty where there is none. */
    public String limits(Component component) {
        boolean least = Double.isFinite(component.least());
        boolean most = Double.isFinite(component.most());
        if (!least && !most) {
            return "";
        }
        String unit = component.unit().isEmpty() ? "" : " " + component.unit();
        String key = least && most ? "limits.both" : least ? "limits.least" : "limits.most";
        return texts.text(key, number(component.least()), number(component.most())) + unit;
    }

    /** A number with all the digits it has. */
    String number(double value) {
        if (Double.isInfinite(value)) {
            return "";
        }
        int decimals = Math.max(
                0, new BigDecimal(Double.toString(value)).stripTrailingZeros().scale());
        return reader.number(value, decimals);
    }

    /** A number somebody could type here: one digit, in the middle of the limits. */
    String example(Component component) {
        double least = Double.isFinite(component.least()) ? component.least() : Math.min(0, component.most());
        double most = Double.isFinite(component.most()) ? component.most() : Math.max(100, 2 * least);
        BigDecimal middle = new BigDecimal((least + most) / 2)
                .round(new java.math.MathContext(1, java.math.RoundingMode.HALF_EVEN));
        return component.least() > middle.doubleValue() || component.most() < middle.doubleValue()
                ? number(component.least())
                : number(middle.doubleValue());
    }

    /** What to type into a number field: the unit in words where people say it in words. */
    String kindOfNumber(String unit) {
        if (unit.isEmpty()) {
            return texts.text("unit.none");
        }
        try {
            return texts.text("unit." + unit);
        } catch (MissingResourceException symbolOnly) { // most units are only ever written as symbols
            return texts.text("unit.symbol", unit);
        }
    }

    Typed refused(String key, Object... parts) {
        return new Typed.Refused(texts.text(key, parts));
    }

    String text(String key, Object... parts) {
        return texts.text(key, parts);
    }

    /** What a parameter does, its usual value and its limits. */
    public String help(Parameter parameter) {
        String limits = parameter.limits().isEmpty() ? "" : " " + sentenceCase(parameter.limits()) + ".";
        String usual = parameter
                .usual()
                .map(value -> " " + texts.text("parameter.usual", value))
                .orElse("");
        return sentenceCase(parameter.help()) + "." + usual + limits;
    }

    /** A record's refusal as a sentence for the field it names. */
    public String refusal(Invalid invalid, String label) {
        String wrong = invalid.wrong();
        boolean bare = wrong.startsWith("is ")
                || wrong.startsWith("has ")
                || wrong.startsWith("names ")
                || wrong.startsWith("must ");
        return sentenceCase(bare ? label + " " + wrong : wrong) + ". " + sentenceCase(invalid.remedy()) + ".";
    }
}
