package groupwright.workbench.riders;

import groupwright.definition.record.Amount;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Notation;
import groupwright.workbench.notation.Typed;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tyre width and bead seat diameter in millimetres as they stand on a tyre, ISO 5775: {@code 57-622}. */
record WheelNotation(Words words) implements Notation {
    private static final Pattern WIDTH_AND_SEAT =
            Pattern.compile("\\s*([0-9]{2,3}(?:[.,][0-9])?)\\s*[-\u2013\u2212 ]\\s*([0-9]{3})\\s*");

    /** Both numbers; their fields check the limits. */
    record Wheel(Amount tyre, Amount beadSeat) {}

    @Override
    public String shown(Optional<?> value) {
        Reader reader = new Reader(words.locale());
        return value.map(Wheel.class::cast)
                .map(wheel -> reader.exact(wheel.tyre().value()) + "-"
                        + reader.exact(wheel.beadSeat().value()))
                .orElse("");
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return Typed.empty();
        }
        Matcher matcher = WIDTH_AND_SEAT.matcher(text);
        if (!matcher.matches()) {
            return new Typed.Refused(words.text("wheel.not", text.strip()));
        }
        return Typed.of(new Wheel(
                Amount.of(Double.parseDouble(matcher.group(1).replace(',', '.'))),
                Amount.of(Double.parseDouble(matcher.group(2)))));
    }
}
