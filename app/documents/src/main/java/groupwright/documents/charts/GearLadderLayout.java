package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * Where everything on a gear ladder stands.
 *
 * @param ringX where the rings' teeth stand
 * @param scale the axis
 * @param uprights the needs
 * @param floors how many lines of sentences stand above the lanes
 */
record GearLadderLayout(double width, double ringX, LogScale scale, List<Upright> uprights, int floors, double bottom) {
    static final double SIGN_X = 6;
    static final double NAME_X = 18;
    static final double SENTENCE_GAP = 5;
    private static final double LANE = 26;
    private static final double FLOOR = 15;
    private static final double AXIS = 18;
    private static final double NARROWEST = 360;
    private static final double RIGHT_MARGIN = 8;
    private static final double BETWEEN_SENTENCES = 8;
    /** Share of room beyond the outermost values, so that no sign touches an end. */
    private static final double BEYOND = 1.05;

    /**
     * A need in its place.
     *
     * @param x of the line
     * @param left where its sentence starts
     * @param right where its sentence ends
     * @param floor at which height its sentence stands, 0 next to the lanes
     */
    record Upright(GearLadder.Need need, double x, double left, double right, int floor) {
        /** Whether a line at {@code x} up to some floor would run through this sentence. */
        private boolean isCrossedBy(Upright other) {
            return other.x > left - SENTENCE_GAP && other.x < right + SENTENCE_GAP && other.floor >= floor;
        }

        private boolean collidesWith(Upright other) {
            boolean sameFloor = floor == other.floor
                    && left < other.right + BETWEEN_SENTENCES
                    && other.left < right + BETWEEN_SENTENCES;
            return sameFloor || isCrossedBy(other) || other.isCrossedBy(this);
        }
    }

    static GearLadderLayout of(GearLadder ladder, TextWidths widths, double asked) {
        double width = Math.max(asked, NARROWEST);
        double names = widest(ladder, widths, GearLadder.Lane::concept);
        double ringX = NAME_X + names + 7;
        double left = ringX + widest(ladder, widths, lane -> Integer.toString(lane.ring())) + 16;
        LogScale scale = scale(ladder, left, width - RIGHT_MARGIN);
        List<Upright> uprights = uprights(ladder, scale, widths, width);
        int floors =
                uprights.stream().mapToInt(upright -> upright.floor() + 1).max().orElse(0);
        double bottom = floors * FLOOR + 4 + ladder.lanes().size() * LANE;
        return new GearLadderLayout(width, ringX, scale, uprights, floors, bottom);
    }

    double height() {
        return bottom + AXIS;
    }

    /** Upper end of the grid. */
    double top() {
        return floors * FLOOR;
    }

    /** Middle of a lane, from 0. */
    double laneY(int lane) {
        return floors * FLOOR + 4 + LANE * (lane + 0.5) - 2;
    }

    double sentenceBaseline(Upright upright) {
        return (floors - upright.floor()) * FLOOR - 5;
    }

    double uprightTop(Upright upright) {
        return (floors - upright.floor() - 1) * FLOOR;
    }

    private static double widest(GearLadder ladder, TextWidths widths, Function<GearLadder.Lane, String> text) {
        return ladder.lanes().stream()
                .mapToDouble(lane -> Lettered.LABEL.strong().width(text.apply(lane), widths))
                .max()
                .orElse(0);
    }

    private static LogScale scale(GearLadder ladder, double left, double right) {
        double[] values = DoubleStream.concat(
                        ladder.lanes().stream().flatMapToDouble(lane -> DoubleStream.of(lane.lowest(), lane.highest())),
                        ladder.needs().stream().mapToDouble(GearLadder.Need::developmentM))
                .toArray();
        double low = DoubleStream.of(values).min().orElseThrow();
        double high = DoubleStream.of(values).max().orElseThrow();
        return new LogScale(low / BEYOND, high * BEYOND, left, right);
    }

    /** From right to left, each as low as it can stand; a crowded ladder grows upwards. */
    private static List<Upright> uprights(GearLadder ladder, LogScale scale, TextWidths widths, double width) {
        List<Upright> placed = new ArrayList<>();
        ladder.needs().stream()
                .sorted(Comparator.comparingDouble(GearLadder.Need::developmentM)
                        .reversed())
                .forEach(need -> placed.add(place(need, scale, widths, width, placed)));
        return List.copyOf(placed);
    }

    private static Upright place(
            GearLadder.Need need, LogScale scale, TextWidths widths, double width, List<Upright> placed) {
        double x = scale.position(need.developmentM());
        double room = Lettered.LABEL.strong().width(need.sentence(), widths);
        double right = x + SENTENCE_GAP + room;
        double left = right <= width ? x + SENTENCE_GAP : Math.max(0, x - SENTENCE_GAP - room);
        for (int floor = 0; floor <= placed.size(); floor++) {
            Upright upright = new Upright(need, x, left, left + room, floor);
            if (placed.stream().noneMatch(upright::collidesWith)) {
                return upright;
            }
        }
        int top = placed.stream().mapToInt(Upright::floor).max().orElse(-1) + 1;
        return new Upright(need, x, left, left + room, top);
    }
}
