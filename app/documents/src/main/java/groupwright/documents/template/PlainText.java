package groupwright.documents.template;

/** Text of a record on its way into a document. */
final class PlainText {
    private PlainText() {}

    /**
     * The text on one line: white space of any kind becomes one space; control signs, signs that reverse the reading
     * direction, and halves of signs become visible as {@code [U+202E]}, so that a page shows what the record holds.
     */
    static String of(String recorded) {
        StringBuilder clean = new StringBuilder(recorded.length());
        recorded.codePoints().forEach(sign -> {
            if (isBreakingSpace(sign)) {
                if (clean.length() == 0 || clean.charAt(clean.length() - 1) != ' ') {
                    clean.append(' ');
                }
            } else if (mustBeShown(sign)) {
                clean.append("[U+%04X]".formatted(sign));
            } else {
                clean.appendCodePoint(sign);
            }
        });
        return clean.toString();
    }

    private static boolean isBreakingSpace(int sign) {
        return sign == ' ' || sign >= '\t' && sign <= '\r' || sign == 0x85 || sign == 0x2028 || sign == 0x2029;
    }

    private static boolean mustBeShown(int sign) {
        return Character.getType(sign) == Character.CONTROL
                || Character.getType(sign) == Character.SURROGATE
                || sign >= 0x202A && sign <= 0x202E
                || sign >= 0x2066 && sign <= 0x2069;
    }
}
