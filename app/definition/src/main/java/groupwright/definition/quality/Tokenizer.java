package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Cuts a text into tokens, reading it once from left to right. */
final class Tokenizer {
    private static final String HYPHENS = "-\u2010\u2011";
    private static final String APOSTROPHES = "'\u2019";

    private final String text;
    private final Set<String> abbreviations;
    private final List<Token> tokens = new ArrayList<>();
    private int position;

    private Tokenizer(String text, Set<String> abbreviations) {
        this.text = text;
        this.abbreviations = abbreviations;
    }

    /**
     * Cuts a text. A hyphen inside a compound is no token; white space and control characters neither.
     *
     * @param abbreviations lower-case words after which a full stop ends no sentence
     */
    static List<Token> tokens(String text, Set<String> abbreviations) {
        return new Tokenizer(text, abbreviations).run();
    }

    private List<Token> run() {
        while (position < text.length()) {
            int point = text.codePointAt(position);
            if (Character.isLetter(point)) {
                add(Token.Kind.WORD, endOfWord(position));
            } else if (Character.isDigit(point)) {
                add(Token.Kind.NUMBER, endOfNumber(position));
            } else if (isBlank(point) || isHyphenInside()) {
                position += Character.charCount(point);
            } else {
                add(Token.Kind.MARK, endOfMark(position));
            }
        }
        return tokens;
    }

    private static boolean isBlank(int point) {
        return Character.isWhitespace(point)
                || Character.isSpaceChar(point)
                || Character.isISOControl(point)
                || Character.getType(point) == Character.FORMAT;
    }

    private void add(Token.Kind kind, int end) {
        String cut = text.substring(position, end);
        String normal = kind == Token.Kind.MARK ? mark(cut) : word(cut);
        tokens.add(new Token(kind, link(), normal, position, end));
        position = end;
    }

    private static String word(String cut) {
        return cut.toLowerCase(Locale.ROOT).replace('\u2019', '\'').replace("\u00ad", "");
    }

    /** A run of stops is an ellipsis, a run of question marks is one. */
    private static String mark(String cut) {
        if (cut.startsWith("?")) {
            return "?";
        }
        return cut.startsWith("..") ? "\u2026" : cut;
    }

    private boolean isHyphenInside() {
        return HYPHENS.indexOf(text.charAt(position)) >= 0
                && position > 0
                && position + 1 < text.length()
                && Character.isLetterOrDigit(text.codePointBefore(position))
                && Character.isLetterOrDigit(text.codePointAt(position + 1));
    }

    private Token.Link link() {
        if (tokens.isEmpty()) {
            return Token.Link.SENTENCE;
        }
        Token before = tokens.get(tokens.size() - 1);
        if (position == before.to() + 1 && HYPHENS.indexOf(text.charAt(before.to())) >= 0 && !isMark(before)) {
            return Token.Link.HYPHEN;
        }
        boolean isCapital = !Character.isLowerCase(text.codePointAt(position));
        return isCapital && position > before.to() && endsSentence() ? Token.Link.SENTENCE : Token.Link.APART;
    }

    private static boolean isMark(Token token) {
        return token.kind() == Token.Kind.MARK;
    }

    private boolean endsSentence() {
        Token stop = tokens.get(tokens.size() - 1);
        if (!stop.isMark(".") || tokens.size() < 2) {
            return stop.isMark("!") || stop.isMark("?") || stop.isMark(".");
        }
        Token last = tokens.get(tokens.size() - 2);
        boolean isLetterAfterStop = last.isWord()
                && last.text().length() == 1
                && tokens.size() > 2
                && tokens.get(tokens.size() - 3).isMark("."); // the g of "e.g."
        return !isLetterAfterStop && !abbreviations.contains(last.text());
    }

    private int endOfWord(int start) {
        int end = start;
        while (end < text.length()) {
            int point = text.codePointAt(end);
            int next = end + Character.charCount(point);
            if (!isPartOfWord(point) && !(isApostrophe(point) && isLetterAt(next))) {
                return end;
            }
            end = next;
        }
        return end;
    }

    private static boolean isApostrophe(int point) {
        return APOSTROPHES.indexOf(point) >= 0;
    }

    private static boolean isPartOfWord(int point) {
        int type = Character.getType(point);
        return Character.isLetterOrDigit(point)
                || type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || point == '_'
                || point == '\u00ad';
    }

    private boolean isLetterAt(int index) {
        return index < text.length() && Character.isLetter(text.codePointAt(index));
    }

    private int endOfNumber(int start) {
        int end = start;
        while (end < text.length() && isPartOfNumber(end)) {
            end += Character.charCount(text.codePointAt(end));
        }
        return end;
    }

    private boolean isPartOfNumber(int index) {
        if (Character.isDigit(text.codePointAt(index))) {
            return true;
        }
        return ".,".indexOf(text.charAt(index)) >= 0
                && index + 1 < text.length()
                && Character.isDigit(text.codePointAt(index + 1));
    }

    private int endOfMark(int start) {
        char mark = text.charAt(start);
        int end = start + Character.charCount(text.codePointAt(start));
        while ((mark == '.' || mark == '?') && end < text.length() && text.charAt(end) == mark) {
            end++;
        }
        return end;
    }
}
