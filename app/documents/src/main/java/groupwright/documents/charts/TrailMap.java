package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The way from what riders said through one requirement to what is claimed, as layers on a thread.
 *
 * @param title what it shows
 * @param caption stands muted behind the title
 * @param layers from top to bottom, at least one
 */
public record TrailMap(String title, String caption, List<Layer> layers) implements Chart {
    /**
     * One step of the way.
     *
     * @param name what its stations are, for example {@code said}
     * @param stations side by side, at most three in a row; empty where the way is broken
     * @param gap said instead of stations where there are none, for example {@code no need}
     */
    public record Layer(String name, List<Station> stations, String gap) {
        public Layer {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(gap, "gap");
            stations = List.copyOf(stations);
        }
    }

    /**
     * One record, criterion, answer or field.
     *
     * @param name stands strong, for example {@code N-001}
     * @param words beside and below it
     */
    public record Station(String name, String words) {
        public Station {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(words, "words");
        }

        String text() {
            return words.isEmpty() ? name : name + " " + words;
        }
    }

    public TrailMap {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(caption, "caption");
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a trail needs at least one layer");
        }
    }

    @Override
    public String description() {
        return String.join("; ", layers.stream().map(TrailMap::sentence).toList()) + ".";
    }

    private static String sentence(Layer layer) {
        List<String> names = layer.stations().stream().map(Station::name).toList();
        return layer.name() + ": " + (names.isEmpty() ? layer.gap() : String.join(", ", names));
    }

    @Override
    public ChartTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Layer layer : layers) {
            Stream<Station> stations =
                    layer.stations().isEmpty() ? Stream.of(new Station("—", layer.gap())) : layer.stations().stream();
            stations.forEach(station -> rows.add(List.of(layer.name(), station.name(), station.words())));
        }
        return new ChartTable(List.of("", "", ""), 3, rows);
    }

    @Override
    public ChartSize size(TextWidths widths, double width) {
        TrailMapLayout layout = TrailMapLayout.of(this, widths, width);
        return new ChartSize(layout.width(), layout.height());
    }

    @Override
    public void paint(Pen pen, double width) {
        TrailMapPainter.paint(pen, TrailMapLayout.of(this, pen.lettering(), width));
    }
}
