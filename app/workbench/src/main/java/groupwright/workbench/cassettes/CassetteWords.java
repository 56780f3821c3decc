package groupwright.workbench.cassettes;

import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Coverage;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Spread;
import groupwright.drivetrain.search.Standing;
import groupwright.workbench.look.Words;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What the place says of cassettes. */
final class CassetteWords {
    private static final double NOTHING = 1e-9;

    private final Words words;
    private final Reader reader;

    CassetteWords(Locale locale) {
        this.words = Words.of(CassetteWords.class, locale);
        this.reader = new Reader(locale);
    }

    Words words() {
        return words;
    }

    Locale locale() {
        return words.locale();
    }

    String name(Measure measure) {
        return words.text("measure." + measure);
    }

    /** Short, for a head. */
    String head(Measure measure) {
        return words.text("head." + measure);
    }

    String number(Measure measure, double value) {
        return reader.number(value, measure.decimals());
    }

    String number(double value, int decimals) {
        return reader.number(value, decimals);
    }

    String amount(Measure measure, double value) {
        return number(measure, value) + "\u202F" + measure.unit();
    }

    /** With its sign, for differences. */
    String change(Measure measure, double value) {
        return reader.signed(value, measure.decimals());
    }

    /** How many cassettes the answer speaks for and how many of the best are listed. */
    String shownOf(Finding finding) {
        int shown = finding.shown().size();
        String few = reader.number(shown, 0);
        String all = reader.number(finding.outOf(), 0);
        Coverage coverage = finding.coverage();
        String covered = words.text("covered", reader.number(coverage.admitted().doubleValue(), 0), all);
        if (shown == finding.outOf()) {
            return covered;
        }
        Objective first = finding.inquiry().question().ordered().get(0);
        return words.text("spread", covered, few, all, name(Measure.of(first)), reader.number(Spread.USUAL, 0));
    }

    /** Why there is no cassette at all: which limit takes most. */
    String nothing(Coverage coverage) {
        return coverage.removed().stream()
                .max(Comparator.comparing(Coverage.Removed::cassettes))
                .map(removed -> words.text(
                        "none.limit",
                        removed.limit().demand(),
                        reader.number(removed.cassettes().doubleValue(), 0),
                        reader.number(coverage.candidates().doubleValue(), 0)))
                .orElse("");
    }

    /** Where a cassette stands. */
    String standing(Standing standing) {
        if (standing instanceof Standing.Best) {
            return words.text("why.best");
        } else if (standing instanceof Standing.Breaks breaks) {
            return breaks(breaks.cassette(), breaks.limit());
        } else if (standing instanceof Standing.Beaten beaten) {
            return words.text("why.beaten", Candidate.cogs(beaten.by().cassette()), lead(beaten.lead()));
        }
        return words.text("why.outside");
    }

    private String breaks(Cassette cassette, Limit limit) {
        return words.text("why.breaks", limit.demand(), Candidate.cogs(cassette));
    }

    private String lead(Map<Objective, Double> lead) {
        String by = lead.entrySet().stream()
                .filter(one -> one.getValue() > NOTHING)
                .map(one -> by(one.getKey(), one.getValue()))
                .collect(Collectors.joining(", "));
        boolean equal = lead.values().stream().anyMatch(value -> value <= NOTHING);
        return equal ? words.text("why.elseEqual", by) : by;
    }

    private String by(Objective objective, double lead) {
        Measure measure = Measure.of(objective);
        String better = objective.better() == Objective.Better.HIGHER ? "why.more" : "why.less";
        return words.text(better, name(measure), exact(measure, lead));
    }

    /** So many decimals that a difference does not read as none. */
    private String exact(Measure measure, double value) {
        int decimals = measure.decimals();
        while (decimals < 6 && Math.abs(value) < 0.5 * Math.pow(10, -decimals)) {
            decimals++;
        }
        return reader.number(value, decimals) + "\u202F" + measure.unit();
    }
}
