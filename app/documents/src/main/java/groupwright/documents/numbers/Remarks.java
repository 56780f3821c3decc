package groupwright.documents.numbers;

import groupwright.documents.labels.Labels;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What stands in brackets behind a number, in the reader's language; pairs of cogs and the like are the same in all. */
final class Remarks {
    private static final String GEAR = "(\\d+/\\d+)";

    /** Longer words before those that begin them; what is put in holds no words of a later rule in English. */
    private static final List<Rule> RULES = List.of(
            new Rule("^walks$", "remark.walks"),
            new Rule("^(\\d+) rpm in the highest gear$", "remark.highestGear"),
            new Rule(", (\\d+) in all do not close", "remark.openInAll"),
            new Rule(GEAR + " hangs slack by (\\d+) mm", "remark.slack"),
            new Rule(GEAR + " lacks (\\d+) mm of chain", "remark.lacks"),
            new Rule(GEAR + " has the guide pulley on the cog", "remark.onCog"),
            new Rule(GEAR + " finds no way round the wheels", "remark.noWay"),
            new Rule("(?<=.)() at full travel", "remark.fullTravel"),
            new Rule("^(\\d+/\\d+.*) closes$", "remark.closes"),
            new Rule("^(\\d+/\\d+.*) too tight$", "remark.tooTight"),
            new Rule("^(\\d+/\\d+.*) hangs slack$", "remark.hangs"),
            new Rule("^(\\d+/\\d+[^;]*) to (\\d+/\\d+)", "remark.to"));

    /**
     * Words of a figure and how a document says them.
     *
     * @param words with a group for each part of the label
     */
    private record Rule(Pattern words, String label) {
        Rule(String words, String label) {
            this(Pattern.compile(words), label);
        }

        String in(String remark, Labels labels) {
            return words.matcher(remark)
                    .replaceAll(found -> java.util.regex.Matcher.quoteReplacement(labels.text(label, parts(found))));
        }

        private static String[] parts(MatchResult found) {
            return IntStream.rangeClosed(1, found.groupCount())
                    .mapToObj(found::group)
                    .toArray(String[]::new);
        }
    }

    private Remarks() {}

    static String of(String remark, Labels labels) {
        String said = remark;
        for (Rule rule : RULES) {
            said = rule.in(said, labels);
        }
        return said;
    }
}
