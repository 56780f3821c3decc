package groupwright.documents.numbers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/**
 * How one reader wants numbers and dates: a thin space in thousands, a true minus, the decimal sign of the language.
 *
 * @param locale language and country
 * @param measures what units computed numbers are shown in
 */
public record Reader(Locale locale, Measures measures) {
    /** Figures of finer resolution pass numbers on as they were entered. */
    static final int MOST_PADDED = 5;

    private static final char THIN_SPACE = '\u2009';
    private static final String MINUS = "\u2212";

    /** A reader of metric measures. */
    public Reader(Locale locale) {
        this(locale, Measures.METRIC);
    }

    /**
     * How this reader sees numbers of a unit.
     *
     * @param unit the symbol it is kept with, for example {@code mm}
     */
    public Measured in(String unit) {
        return new Measured(this, unit);
    }

    /** A number with a fixed count of decimals; more than five are only shown as far as they say something. */
    public String number(double value, int decimals) {
        String plain = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        if (decimals > MOST_PADDED) {
            plain = plain.replaceFirst("\\.?0+$", "");
        }
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String rest = point < 0
                ? ""
                : DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() + plain.substring(point + 1);
        boolean negative = value < 0 && plain.chars().anyMatch(c -> c >= '1' && c <= '9');
        return (negative ? MINUS : "") + grouped(whole) + rest;
    }

    /** A number with its sign always shown, as margins are. */
    public String signed(double value, int decimals) {
        String text = number(value, decimals);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return text.startsWith(MINUS) || zero ? text : "+" + text;
    }

    /** A number with as many decimals as it needs, at most 9. */
    public String exact(double value) {
        return number(value, decimals(value));
    }

    /** As many decimals as a number needs, at most 9. */
    static int decimals(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return Math.max(0, rounded.scale());
    }

    private static String grouped(String digits) {
        if (digits.length() < 5) { // four digits read well in one piece
            return digits;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            if (i > 0 && (digits.length() - i) % 3 == 0) {
                text.append(THIN_SPACE);
            }
            text.append(digits.charAt(i));
        }
        return text.toString();
    }

    /** A day as the reader writes it. */
    public String day(LocalDate day) {
        if (locale.getLanguage().equals("en")) {
            return DateTimeFormatter.ofPattern("d MMMM uuuu", locale).format(day);
        }
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(locale)
                .format(day);
    }
}
