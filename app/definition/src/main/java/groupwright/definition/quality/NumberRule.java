package groupwright.definition.quality;

import java.util.BitSet;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds numbers that stand alone: no unit, no thing counted, no reason to be a bare number. */
final class NumberRule implements Rule {
    /** How far back a word such as "ratio" excuses a bare number. */
    private static final int LOOK_BACK = 12;

    private static final Set<String> SIGNS = Set.of("%", "‰", "°", "€", "$", "£", "¥", "′", "″", "\"");
    private static final Set<String> BETWEEN = Set.of(",", "–", "/", ":", "×", "+", "±", "…");

    private final Advice advice;
    private final Set<String> particles;
    private final Set<String> joints;
    private final Set<String> labels;
    private final Set<String> dateWords;
    private final Set<String> dimensionless;

    NumberRule(Advice advice) {
        this.advice = advice;
        particles = advice.words().set("particles");
        joints = advice.words().set("between numbers");
        labels = advice.words().set("labels");
        dateWords = advice.words().set("before a year");
        dimensionless = advice.words().set("bare numbers");
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        BitSet named = namedNumbers(reading);
        return IntStream.range(0, reading.tokens().size())
                .filter(i -> reading.token(i).isNumber() && !named.get(i))
                .filter(i -> !hasUnit(reading, i) && !isExcused(reading, i))
                .mapToObj(i -> advice.on(reading, new Span(i, i + 1)));
    }

    /** Numbers that are part of a name: "G-2", "ISO 4210-8:2014". */
    static BitSet namedNumbers(Reading reading) {
        BitSet named = new BitSet();
        reading.standards()
                .forEach(standard ->
                        named.set(standard.span().first(), standard.span().last()));
        boolean isName = false;
        for (int i = 0; i < reading.tokens().size(); i++) {
            Token token = reading.token(i);
            isName = token.isHyphenated() ? isName : token.isWord();
            if (isName) {
                named.set(i);
            }
        }
        return named;
    }

    private boolean hasUnit(Reading reading, int index) {
        int next = index + 1;
        if (next == reading.tokens().size() || reading.token(next).startsSentence()) {
            return false;
        }
        Token token = reading.token(next);
        boolean isNumberBehind =
                next + 1 < reading.tokens().size() && reading.token(next + 1).isNumber();
        return switch (token.kind()) {
            case NUMBER -> true; // the last number of a row has to name the unit
            case WORD ->
                token.isHyphenated()
                        || !particles.contains(token.text())
                        || joints.contains(token.text()) && isNumberBehind;
            case MARK ->
                SIGNS.contains(token.text())
                        || BETWEEN.contains(token.text()) && isNumberBehind
                        || isBracketedUnit(reading, next);
        };
    }

    /** "(mm)" or "[mm]" directly behind the number; "(TBC with supplier)" is none. */
    private static boolean isBracketedUnit(Reading reading, int index) {
        Token open = reading.token(index);
        return (open.isMark("(") || open.isMark("["))
                && index + 2 < reading.tokens().size()
                && reading.token(index + 1).isWord()
                && (reading.token(index + 2).isMark(")")
                        || reading.token(index + 2).isMark("]"));
    }

    private boolean isExcused(Reading reading, int index) {
        if (index == 0) {
            return reading.tokens().size() > 1 && reading.token(1).isMark("."); // the number of the statement
        }
        Token before = reading.token(index - 1);
        boolean isRatio =
                before.isMark(":") && index > 1 && reading.token(index - 2).isNumber();
        boolean isYear = dateWords.contains(before.text()) && Standards.isYear(reading.token(index));
        return SIGNS.contains(before.text())
                || labels.contains(before.text())
                || isRatio
                || isYear
                || IntStream.range(Math.max(0, index - LOOK_BACK), index)
                        .anyMatch(i -> dimensionless.contains(reading.token(i).text()));
    }
}
