package groupwright.workbench.notation;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Numbers as people type them: decimal comma or point in every language, thousands parted by blanks of any width, by
 * apostrophes, or by the sign that is not the decimal one; a hyphen or a true minus in front.
 *
 * <p>A text such as "1,500" is one and a half to some and fifteen hundred to others. Where the sign is the reader's own
 * sign for thousands it is not guessed.
 */
final class NumberText {
    private static final Pattern BLANK = Pattern.compile("(?<=[0-9])[ \u00a0\u2009\u202f'\u2019](?=[0-9]{3}(?![0-9]))");
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern GROUPED_BY_POINTS = Pattern.compile("-?[1-9][0-9]{0,2}(\\.[0-9]{3})+");
    private static final int MOST_DIGITS = 15; // more than a double holds

    private NumberText() {}

    /** What a text means as a number. */
    sealed interface Result {
        /** A number. */
        record Number(BigDecimal value) implements Result {}

        /** It can be read in two ways. */
        record TwoWays(String one, String other) implements Result {}

        /** It has more digits than can be kept. */
        record TooLong() implements Result {}

        /** It is no number. */
        record None() implements Result {}
    }

    static Result read(String text, Locale locale) {
        char decimal = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        String signs = text.strip().replace('\u2212', '-').replace(decimal == ',' ? '.' : decimal, '.');
        String joined = BLANK.matcher(signs).replaceAll("");
        int commas = count(joined, ',');
        int points = count(joined, '.');
        if (commas > 0 && points > 0) {
            return bothSigns(joined, commas, points);
        } else if (commas + points > 1) {
            String pointed = joined.replace(',', '.');
            return GROUPED_BY_POINTS.matcher(pointed).matches() ? number(pointed.replace(".", "")) : new Result.None();
        }
        return oneSign(joined, DecimalFormatSymbols.getInstance(locale).getGroupingSeparator());
    }

    /** The last sign is the decimal one, the others part thousands. */
    private static Result bothSigns(String text, int commas, int points) {
        boolean commaLast = text.lastIndexOf(',') > text.lastIndexOf('.');
        if ((commaLast ? commas : points) > 1) {
            return new Result.None();
        }
        int decimal = commaLast ? text.lastIndexOf(',') : text.lastIndexOf('.');
        String whole = text.substring(0, decimal).replace(',', '.');
        return GROUPED_BY_POINTS.matcher(whole).matches()
                ? number(whole.replace(".", "") + "." + text.substring(decimal + 1))
                : new Result.None();
    }

    private static Result oneSign(String text, char grouping) {
        String pointed = text.replace(',', '.');
        if (text.indexOf(grouping) >= 0 && GROUPED_BY_POINTS.matcher(pointed).matches()) {
            return new Result.TwoWays(pointed.replace(".", ""), decimal(text, grouping));
        }
        return number(pointed);
    }

    /** The same as a decimal number nobody can read otherwise. */
    private static String decimal(String text, char grouping) {
        String other = grouping == ',' ? "." : ",";
        String changed = text.replace(String.valueOf(grouping), other);
        return changed.replaceFirst("0+$", "").replaceFirst("[.,]$", "");
    }

    private static Result number(String text) {
        if (!PLAIN.matcher(text).matches()) {
            return new Result.None();
        }
        BigDecimal value = new BigDecimal(text).stripTrailingZeros();
        boolean tooLong = value.precision() - value.scale() > MOST_DIGITS || value.scale() > MOST_DIGITS;
        return tooLong ? new Result.TooLong() : new Result.Number(value);
    }

    private static int count(String text, char sign) {
        return (int) text.chars().filter(c -> c == sign).count();
    }
}
