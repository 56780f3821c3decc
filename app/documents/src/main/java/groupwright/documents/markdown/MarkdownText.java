package groupwright.documents.markdown;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes plain text so that every Markdown reader shows it as it is: nothing becomes markup, a link or a sign. */
final class MarkdownText {
    /** Signs that can begin something anywhere in a line, extensions of common viewers included. */
    private static final String ALWAYS = "\\`*_[]<>&|~$@";
    /** Signs that begin a block or underline one at the start of a line. */
    private static final String AT_LINE_START = "#+-=:>";

    private static final Pattern ORDERED_ITEM = Pattern.compile("(\\d{1,9})([.)].*)", Pattern.DOTALL);
    private static final Pattern ADDRESS_OR_SIGN_NAME = Pattern.compile(":(?=//|[A-Za-z0-9_+-]+:)");
    private static final Pattern WEB_NAME = Pattern.compile("(?i)(www)\\.");

    /** Where in the line the text stands. */
    enum Position {
        LINE_START,
        INSIDE,
        /** In a table cell, where the writer itself escapes the bar. */
        IN_CELL
    }

    private MarkdownText() {}

    /** The text with backslashes where they are needed, white space at the start of a line kept. */
    static String escape(String text, Position position) {
        if (text.isEmpty()) {
            return text;
        }
        String body = text;
        String start = "";
        if (position == Position.LINE_START) {
            Matcher ordered = ORDERED_ITEM.matcher(text);
            if (ordered.matches()) {
                start = ordered.group(1) + "\\";
                body = ordered.group(2);
            } else if (AT_LINE_START.indexOf(text.charAt(0)) >= 0) {
                start = "\\" + text.charAt(0);
                body = text.substring(1);
            } else if (text.charAt(0) == ' ') {
                start = "&#32;";
                body = text.substring(1);
            }
        }
        return start + inside(body, position);
    }

    private static String inside(String text, Position position) {
        StringBuilder escaped = new StringBuilder(text.length() + 8);
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            boolean doubledBrace = sign == '{' && i + 1 < text.length() && text.charAt(i + 1) == '{';
            boolean doneByWriter = sign == '|' && position == Position.IN_CELL;
            if (!doneByWriter && ALWAYS.indexOf(sign) >= 0 || doubledBrace) {
                escaped.append('\\');
            }
            escaped.append(sign);
        }
        String withoutAddresses = ADDRESS_OR_SIGN_NAME.matcher(escaped).replaceAll("\\\\:");
        return WEB_NAME.matcher(withoutAddresses).replaceAll("$1\\\\.");
    }
}
