package groupwright.documents.charts;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measured;
import java.util.ArrayList;
import java.util.List;

/** What a trade-off says in words. */
final class TradeOffWords {
    private static final int ABOUT_UP = 5;
    private static final int ABOUT_ACROSS = 6;

    private final TradeOff chart;
    private final Labels labels;
    private final Measured across;
    private final Measured up;

    TradeOffWords(TradeOff chart) {
        this.chart = chart;
        this.labels = Labels.of(chart.reader().locale());
        this.across = chart.reader().in(chart.across().unit());
        this.up = chart.reader().in(chart.up().unit());
    }

    String title() {
        return labels.text("tradeOff.title", chart.up().name(), chart.across().name());
    }

    String caption() {
        return labels.text("tradeOff.caption", up.unit(), across.unit());
    }

    String better() {
        return labels.text("tradeOff.better");
    }

    String description() {
        return labels.text(
                "tradeOff.description",
                chart.up().name(),
                chart.across().name(),
                Integer.toString(chart.points().size()),
                Integer.toString(chart.edge().size()));
    }

    ChartTable table() {
        List<List<String>> rows = new ArrayList<>();
        chart.points()
                .forEach(
                        point -> rows.add(List.of(point.name(), across.number(point.x(), 2), up.number(point.y(), 2))));
        return new ChartTable(
                List.of(
                        labels.text("tradeOff.name"),
                        labels.text("tradeOff.column", chart.across().name(), across.unit()),
                        labels.text("tradeOff.column", chart.up().name(), up.unit())),
                1,
                rows);
    }

    int ticksUp() {
        return ABOUT_UP;
    }

    int ticksAcross() {
        return ABOUT_ACROSS;
    }

    List<String> across(List<Double> ticks) {
        return ticks.stream().map(tick -> across.number(tick, decimals(ticks))).toList();
    }

    List<String> up(List<Double> ticks) {
        return ticks.stream().map(tick -> up.number(tick, decimals(ticks))).toList();
    }

    /** As many digits as tell the ticks apart. */
    private static int decimals(List<Double> ticks) {
        return ticks.size() < 2 ? 1 : (int) Math.max(0, Math.ceil(-Math.log10(ticks.get(1) - ticks.get(0)) - 1e-9));
    }
}
