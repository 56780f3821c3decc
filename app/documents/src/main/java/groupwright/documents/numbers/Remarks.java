package groupwright.documents.numbers;

import groupwright.documents.labels.Labels;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands in brackets behind a number, in the reader's language; pairs of cogs and the like are the same in all. */
final class Remarks {
    private static final Pattern IN_HIGHEST_GEAR = Pattern.compile("(\\d+) rpm in the highest gear");

    private Remarks() {}

    static String of(String remark, Labels labels) {
        if (remark.equals("walks")) {
            return labels.text("remark.walks");
        }
        Matcher cadence = IN_HIGHEST_GEAR.matcher(remark);
        return cadence.matches() ? labels.text("remark.highestGear", cadence.group(1)) : remark;
    }
}
