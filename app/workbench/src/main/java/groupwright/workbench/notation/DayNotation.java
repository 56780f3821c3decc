package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Optional;

/**
 * Days: shown as ISO 8601, which nobody can misread; typed so or in the short form of the reader's language, with two or
 * four digits for the year.
 */
record DayNotation(FieldWords words, Component component) implements Notation {
    private static final LocalDate SAMPLE = LocalDate.of(2026, 3, 9);
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    @Override
    public String shown(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    @Override
    public Typed read(String text) {
        String typed = text.strip();
        if (typed.isEmpty()) {
            return component.optional() == Component.Presence.OPTIONAL
                    ? Typed.empty()
                    : words.refused("day.required", FieldWords.label(component), SAMPLE.toString());
        }
        for (DateTimeFormatter format : formats()) {
            Optional<LocalDate> day = parsed(typed, format);
            if (day.isPresent()) {
                return Typed.of(day.get());
            }
        }
        return words.refused(
                "day.not",
                Shortened.of(text),
                SAMPLE.toString(),
                formats().get(2).format(SAMPLE));
    }

    /** ISO, then the short form with two digits for the year, then with four. */
    private List<DateTimeFormatter> formats() {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                        FormatStyle.SHORT, null, IsoChronology.INSTANCE, words.locale())
                .replaceAll("d+", "d")
                .replaceAll("M+", "M");
        return List.of(
                DateTimeFormatter.ISO_LOCAL_DATE,
                format(pattern.replaceAll("[yu]+", "uu")),
                format(pattern.replaceAll("[yu]+", "uuuu")));
    }

    private DateTimeFormatter format(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, words.locale()).withResolverStyle(ResolverStyle.STRICT);
    }

    private static Optional<LocalDate> parsed(String typed, DateTimeFormatter format) {
        try {
            return Optional.of(LocalDate.parse(typed, format))
                    .filter(day -> day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR);
        } catch (DateTimeException otherForm) { // the caller tries the next one
            return Optional.empty();
        }
    }
}
