package groupwright.workbench.cli;

import java.util.regex.Pattern;

/** Numbers as they are typed on a command line. */
final class Words {
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,9}([.][0-9]{1,9})?");

    private Words() {}

    /**
     * Counts of teeth, parted by commas.
     *
     * @throws Refusal naming the first that is no whole number
     */
    static int[] teeth(String option, String text) {
        String[] words = text.split(",", -1);
        int[] teeth = new int[words.length];
        for (int i = 0; i < words.length; i++) {
            String word = words[i].strip();
            if (!WHOLE.matcher(word).matches()) {
                throw Refusal.of(
                        option + ": \"" + word + "\" is no count of teeth",
                        "write whole numbers parted by commas, for example " + option + " 10,12,14");
            }
            teeth[i] = Integer.parseInt(word);
        }
        return teeth;
    }

    /**
     * A number.
     *
     * @throws Refusal if it is none
     */
    static double number(String option, String text) {
        if (!NUMBER.matcher(text).matches()) {
            throw Refusal.of(
                    option + ": \"" + text + "\" is no number", "write it with a point, for example 57 or 57.5");
        }
        return Double.parseDouble(text);
    }
}
