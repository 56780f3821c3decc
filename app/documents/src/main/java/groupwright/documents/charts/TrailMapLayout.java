package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;

/**
 * Where layers and stations of a trail stand.
 *
 * @param width over all
 * @param height over all
 * @param layers from top to bottom
 */
record TrailMapLayout(double width, double height, List<PlacedLayer> layers) {
    static final double THREAD = 74;
    static final double LINE = 14;
    static final double PAD = 6;
    private static final double LEFT = THREAD + 14;
    private static final double NARROWEST = 120;
    private static final double GAP = 8;
    private static final double LAYER_GAP = 14;
    /** Keeps the right frame of a box inside the drawing. */
    private static final double EDGE = 3;

    private static final int MOST_IN_ROW = 3;

    /** A layer: its name's lines and its boxes; the dot on the thread is level with the first line. */
    record PlacedLayer(List<String> name, double top, List<PlacedStation> stations, String gap) {}

    /** A box of text; the name stands at the start of the first line. */
    record PlacedStation(String name, List<String> lines, double x, double y, double width, double height) {}

    static TrailMapLayout of(TrailMap map, TextWidths widths, double width) {
        double room = Math.max(width, LEFT + NARROWEST);
        List<PlacedLayer> placed = new ArrayList<>();
        double y = 2;
        for (TrailMap.Layer layer : map.layers()) {
            List<String> name = WrappedText.lines(layer.name(), Lettered.LABEL, widths, THREAD - 14);
            List<PlacedStation> stations = stations(layer, widths, y, room - LEFT - EDGE);
            placed.add(new PlacedLayer(name, y, stations, layer.gap()));
            double bottom = stations.stream()
                    .mapToDouble(station -> station.y() + station.height())
                    .max()
                    .orElse(y + LINE + 2 * PAD);
            y = Math.max(bottom, y + PAD + name.size() * LINE) + LAYER_GAP;
        }
        return new TrailMapLayout(room, y - LAYER_GAP + 2, List.copyOf(placed));
    }

    private static List<PlacedStation> stations(TrailMap.Layer layer, TextWidths widths, double top, double room) {
        List<PlacedStation> placed = new ArrayList<>();
        int inRow = Math.max(1, Math.min(layer.stations().size(), Math.min(MOST_IN_ROW, (int) (room / NARROWEST))));
        double width = (room - (inRow - 1) * GAP) / inRow;
        double y = top;
        for (int start = 0; start < layer.stations().size(); start += inRow) {
            List<TrailMap.Station> row = layer.stations()
                    .subList(start, Math.min(start + inRow, layer.stations().size()));
            List<List<String>> texts = row.stream()
                    .map(station -> WrappedText.lines(
                            station.text(), Lettered.LABEL.strong(), widths, width - 2 * PAD)) // strong is the wider
                    .toList();
            double height =
                    2 * PAD + LINE * texts.stream().mapToInt(List::size).max().orElse(1);
            for (int i = 0; i < row.size(); i++) {
                placed.add(
                        new PlacedStation(row.get(i).name(), texts.get(i), LEFT + i * (width + GAP), y, width, height));
            }
            y += height + GAP;
        }
        return placed;
    }
}
