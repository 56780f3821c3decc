package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds standards by the body that issues them, in capitals, and the number behind it. */
final class Standards {
    /** How many tokens after the number a year or the word "edition" is looked for. */
    private static final int LOOK_AHEAD = 4;

    private final Set<String> bodies;
    private final Set<String> editions;

    Standards(Set<String> bodies, Set<String> editions) {
        this.bodies = bodies;
        this.editions = editions;
    }

    /** One pass: what was read as a list of bodies is not read again. */
    List<Standard> in(List<Token> tokens, String text) {
        List<Standard> found = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            if (!isBody(tokens.get(at), text)) {
                at++;
                continue;
            }
            int number = at + 1;
            while (number < tokens.size()
                    && (isBody(tokens.get(number), text) || tokens.get(number).isMark("/"))) {
                number++;
            }
            if (number < tokens.size() && isDesignation(tokens.get(number), text)) {
                Standard standard = standard(tokens, at, number);
                found.add(standard);
                at = standard.span().last();
            } else {
                at = number;
            }
        }
        return found;
    }

    private boolean isBody(Token token, String text) {
        return token.isWord() && bodies.contains(text.substring(token.from(), token.to()));
    }

    /** "4210", or a letter with a number as in "E1049". */
    private static boolean isDesignation(Token token, String text) {
        return token.isNumber()
                || token.isWord()
                        && Character.isUpperCase(text.codePointAt(token.from()))
                        && token.text().chars().anyMatch(Character::isDigit);
    }

    private Standard standard(List<Token> tokens, int body, int number) {
        int last = number + 1;
        while (last < tokens.size() && tokens.get(last).isHyphenated()) {
            last++;
        }
        boolean isDated = last > number + 1 && isYearPart(tokens.get(last - 1), tokens.get(number));
        if (last + 1 < tokens.size() && tokens.get(last).isMark(":") && isYear(tokens.get(last + 1))) {
            last += 2;
            isDated = true;
        }
        for (int i = last; !isDated && i < Math.min(last + LOOK_AHEAD, tokens.size()); i++) {
            isDated = isYear(tokens.get(i)) || editions.contains(tokens.get(i).text());
        }
        boolean hasTitle = body > 0 && tokens.get(body - 1).isNumber(); // the 16 of "16 CFR 1512.8"
        Span span = new Span(hasTitle ? body - 1 : body, last);
        return new Standard(span, isDated ? Standard.Dating.DATED : Standard.Dating.UNDATED);
    }

    /** A year as the last part: four digits, or two behind a letter and a number as in "E1049-85". */
    private static boolean isYearPart(Token part, Token number) {
        return isYear(part) || number.isWord() && part.text().matches("[0-9]{2}");
    }

    static boolean isYear(Token token) {
        return token.isNumber() && token.text().matches("(19|20)[0-9]{2}");
    }
}
