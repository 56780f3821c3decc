package groupwright.documents.charts;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What a gear ladder says in words. */
final class GearLadderWords {
    private static final int DECIMALS = 2;

    private final GearLadder ladder;
    private final Labels labels;
    private final Reader reader;

    GearLadderWords(GearLadder ladder) {
        this.ladder = ladder;
        this.labels = Labels.of(ladder.locale());
        this.reader = new Reader(ladder.locale());
    }

    String title() {
        return labels.text("ladder.title");
    }

    String caption() {
        return labels.text("ladder.caption", ladder.riders());
    }

    String description() {
        List<String> parts = new ArrayList<>();
        for (GearLadder.Lane lane : ladder.lanes()) {
            parts.add(labels.text(
                    "ladder.lane",
                    lane.concept(),
                    Integer.toString(lane.ring()),
                    metres(lane.lowest()),
                    metres(lane.highest())));
        }
        ladder.needs().forEach(need -> parts.add(need.sentence()));
        return labels.text("ladder.description", ladder.riders(), String.join("; ", parts));
    }

    /** A row for each lane, its gears from the lowest to the highest; shorter lanes end in empty cells. */
    ChartTable table() {
        int most = ladder.lanes().stream()
                .mapToInt(lane -> lane.developmentsM().size())
                .max()
                .orElse(0);
        List<String> heads = new ArrayList<>(List.of(labels.text("ladder.concept"), labels.text("ladder.ring")));
        IntStream.rangeClosed(1, most)
                .mapToObj(gear -> gear == 1 ? labels.text("ladder.firstGear") : Integer.toString(gear))
                .forEach(heads::add);
        List<List<String>> rows = new ArrayList<>();
        for (GearLadder.Lane lane : ladder.lanes()) {
            List<String> row = new ArrayList<>(List.of(lane.concept(), Integer.toString(lane.ring())));
            lane.developmentsM().forEach(development -> row.add(metres(development)));
            while (row.size() < heads.size()) {
                row.add("");
            }
            rows.add(row);
        }
        return new ChartTable(heads, 1, rows);
    }

    /** The values at an axis; the first says the unit. */
    List<String> ticks(List<Double> values) {
        List<String> texts = new ArrayList<>(values.stream().map(reader::exact).toList());
        if (!texts.isEmpty()) {
            texts.set(0, texts.get(0) + "\u202F" + "m");
        }
        return texts;
    }

    private String metres(double development) {
        return reader.number(development, DECIMALS);
    }
}
