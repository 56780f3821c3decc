package groupwright.documents.charts;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measured;
import groupwright.documents.numbers.Measures;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What a gear ladder says in words. */
final class GearLadderWords {
    private static final String METRE = "m";
    private static final int DECIMALS = 2;

    private final GearLadder ladder;
    private final Labels labels;
    private final Measured length;

    GearLadderWords(GearLadder ladder) {
        this.ladder = ladder;
        this.labels = Labels.of(ladder.reader().locale());
        this.length = ladder.reader().in(METRE);
    }

    String title() {
        return labels.text("ladder.title");
    }

    String caption() {
        return labels.text(isInFeet() ? "ladder.captionFeet" : "ladder.caption", ladder.riders());
    }

    String description() {
        List<String> parts = new ArrayList<>();
        for (GearLadder.Lane lane : ladder.lanes()) {
            parts.add(labels.text(
                    "ladder.lane",
                    lane.concept(),
                    Integer.toString(lane.ring()),
                    shown(lane.lowest()),
                    shown(lane.highest()),
                    length.unit()));
        }
        ladder.needs().forEach(need -> parts.add(need.sentence()));
        return labels.text(
                isInFeet() ? "ladder.descriptionFeet" : "ladder.description",
                ladder.riders(),
                String.join("; ", parts));
    }

    /** A row for each lane, its gears from the lowest to the highest; shorter lanes end in empty cells. */
    ChartTable table() {
        int most = ladder.lanes().stream()
                .mapToInt(lane -> lane.developmentsM().size())
                .max()
                .orElse(0);
        List<String> heads = new ArrayList<>(List.of(labels.text("ladder.concept"), labels.text("ladder.ring")));
        IntStream.rangeClosed(1, most)
                .mapToObj(gear -> gear == 1 ? labels.text("ladder.firstGear", length.unit()) : Integer.toString(gear))
                .forEach(heads::add);
        List<List<String>> rows = new ArrayList<>();
        for (GearLadder.Lane lane : ladder.lanes()) {
            List<String> row = new ArrayList<>(List.of(lane.concept(), Integer.toString(lane.ring())));
            lane.developmentsM().forEach(development -> row.add(shown(development)));
            while (row.size() < heads.size()) {
                row.add("");
            }
            rows.add(row);
        }
        return new ChartTable(heads, 1, rows);
    }

    private boolean isInFeet() {
        return ladder.reader().measures() == Measures.IMPERIAL;
    }

    /** The same scale in the reader's measures, where its ticks are round. */
    LogScale shown(LogScale metres) {
        return new LogScale(
                length.converted(metres.low()), length.converted(metres.high()), metres.left(), metres.right());
    }

    /** The values at an axis, in the reader's measures; the first says the unit. */
    List<String> ticks(List<Double> values) {
        Reader reader = ladder.reader();
        List<String> texts = new ArrayList<>(values.stream().map(reader::exact).toList());
        if (!texts.isEmpty()) {
            texts.set(0, length.with(texts.get(0)).text());
        }
        return texts;
    }

    private String shown(double development) {
        return length.number(development, DECIMALS);
    }
}
