package groupwright.documents.charts;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What step bars say in words. */
final class StepBarsWords {
    private static final int DECIMALS = 1;

    private final StepBars bars;
    private final Labels labels;
    private final Reader reader;

    StepBarsWords(StepBars bars) {
        this.bars = bars;
        this.labels = Labels.of(bars.locale());
        this.reader = new Reader(bars.locale());
    }

    String title() {
        return labels.text("steps.title");
    }

    String caption() {
        return labels.text("steps.caption", bars.concept());
    }

    String pct(StepBars.Step step) {
        return reader.number(step.pct(), DECIMALS);
    }

    /** For example "at most 18 %". */
    String limit(StepBars.Limit limit) {
        return labels.text("target.atMost", reader.exact(limit.mostPct()) + "\u202F%");
    }

    /** Where the limit begins, for example "from 14 teeth"; empty if it holds for all. */
    String from(StepBars.Limit limit) {
        return limit.fromTeeth() == 0 ? "" : labels.text("steps.from", Integer.toString(limit.fromTeeth()));
    }

    /** Both in one line. */
    String wholeLimit(StepBars.Limit limit) {
        return (limit(limit) + " " + from(limit)).strip();
    }

    String description() {
        Comparator<StepBars.Step> bySize = Comparator.comparingDouble(StepBars.Step::pct);
        StringBuilder text = new StringBuilder(labels.text(
                "steps.description",
                bars.concept(),
                pct(bars.steps().stream().min(bySize).orElseThrow()),
                pct(bars.steps().stream().max(bySize).orElseThrow())));
        bars.limit().ifPresent(limit -> {
            String above = pairs(limit::isExceededBy);
            text.append("; ")
                    .append(
                            above.isEmpty()
                                    ? labels.text("steps.noneAbove", wholeLimit(limit))
                                    : labels.text("steps.above", wholeLimit(limit), above));
        });
        String single = pairs(step -> step.likePositions() == 1);
        if (!single.isEmpty()) {
            text.append("; ").append(labels.text("steps.single", single));
        }
        return text.append('.').toString();
    }

    private String pairs(Predicate<StepBars.Step> which) {
        return bars.steps().stream()
                .filter(which)
                .map(StepBarsWords::pair)
                .collect(Collectors.joining(labels.text("list.separator")));
    }

    private static String pair(StepBars.Step step) {
        return step.smaller() + "–" + step.larger();
    }

    ChartTable table() {
        List<String> heads = new ArrayList<>(
                List.of(labels.text("steps.cogs"), labels.text("gears.step"), labels.text("gears.likePositions")));
        bars.limit().ifPresent(limit -> heads.add(1, wholeLimit(limit)));
        List<List<String>> rows = new ArrayList<>();
        for (StepBars.Step step : bars.steps()) {
            List<String> row = new ArrayList<>(List.of(pair(step), pct(step), Integer.toString(step.likePositions())));
            bars.limit().ifPresent(limit -> row.add(1, verdict(limit, step)));
            rows.add(row);
        }
        return new ChartTable(heads, heads.size() - 2, rows);
    }

    private String verdict(StepBars.Limit limit, StepBars.Step step) {
        if (!limit.concerns(step)) {
            return "";
        }
        return labels.text(limit.isExceededBy(step) ? "verdict.misses" : "verdict.meets");
    }
}
