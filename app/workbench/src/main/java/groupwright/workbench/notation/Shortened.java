package groupwright.workbench.notation;

/** Typed text inside a sentence: one line, not longer than people read. */
final class Shortened {
    private static final int MOST = 40;

    private Shortened() {}

    static String of(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= MOST ? line : line.substring(0, MOST - 1) + "…";
    }
}
