package groupwright.definition.figures;

import groupwright.definition.figure.Series;
import groupwright.drivetrain.derailleur.CagePosition;
import groupwright.drivetrain.derailleur.Closure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the chain does in one gear, as {@code chain-path} lists it: numbers by name, each ending in its unit. A number that
 * the geometry does not give is not there.
 *
 * @param gear for example {@code 32/10}
 * @param numbers by name
 */
record GearPath(String gear, Map<String, Double> numbers) {
    /** 1 where the cage takes up the chain between its stops and the guide pulley stays clear of the cog, else 0. */
    static final String CLOSES = "closes";

    /** Cage angle; where the chain does not close, that of the stop it lies at. */
    static final String CAGE = "cage_deg";

    /** Chain that hangs loose at the rearward stop, or, below 0, is lacking at the forward stop; 0 where it closes. */
    static final String LEFT_OVER = "left-over_mm";

    static final String GAP_TIPS = "gap_mm";
    static final String GAP_PITCH = "gap-at-pitch-circles_mm";
    static final String FREE_TIPS = "free_links";
    static final String FREE_PITCH = "free-at-pitch-circles_links";
    static final String WRAP_RING = "wrap-ring_deg";
    static final String WRAP_COG = "wrap-cog_deg";

    GearPath {
        numbers = Map.copyOf(numbers);
    }

    static GearPath of(String gear, Closure closure) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put(CLOSES, closure instanceof Closure.Closes ? 1.0 : 0.0);
        if (closure instanceof Closure.Closes closes) {
            numbers.put(LEFT_OVER, 0.0);
            put(numbers, closes.at());
        } else if (closure instanceof Closure.Slack slack) {
            numbers.put(LEFT_OVER, slack.hangsMm());
            put(numbers, slack.atRearwardStop());
        } else if (closure instanceof Closure.TooTight tight) {
            numbers.put(LEFT_OVER, -tight.lacksMm());
            put(numbers, tight.atForwardStop());
        } else if (closure instanceof Closure.PulleyMeetsCog meets) {
            numbers.put(GAP_TIPS, 0.0);
            numbers.put(GAP_PITCH, 0.0);
            meets.touching().ifPresent(at -> put(numbers, at));
        }
        return new GearPath(gear, numbers);
    }

    private static void put(Map<String, Double> numbers, CagePosition at) {
        numbers.put(CAGE, at.cageAngleDeg());
        numbers.put(GAP_TIPS, at.gap().tipsMm());
        numbers.put(GAP_PITCH, at.gap().pitchCirclesMm());
        numbers.put(FREE_TIPS, at.freeChain().tipsLinks());
        numbers.put(FREE_PITCH, at.freeChain().pitchCirclesLinks());
        numbers.put(WRAP_RING, at.wrapsDeg().ring());
        numbers.put(WRAP_COG, at.wrapsDeg().cog());
    }

    /** A number of it, if the geometry gives it. */
    Optional<Double> number(String name) {
        return Optional.ofNullable(numbers.get(name));
    }

    boolean closes() {
        return number(CLOSES).map(yes -> yes == 1).orElse(false);
    }

    /** Why it does not close, in words; empty where it does. */
    String trouble() {
        if (closes()) {
            return "";
        }
        String why = number(LEFT_OVER)
                .map(over -> over > 0
                        ? " hangs slack by " + Math.round(over) + " mm"
                        : " lacks " + Math.round(-over) + " mm of chain")
                .orElse(
                        numbers.containsKey(GAP_TIPS)
                                ? " has the guide pulley on the cog"
                                : " finds no way round the wheels");
        return gear + why;
    }

    private static final List<String> ORDER =
            List.of(CLOSES, LEFT_OVER, CAGE, GAP_TIPS, GAP_PITCH, FREE_TIPS, FREE_PITCH, WRAP_RING, WRAP_COG);

    /** As positions of a list, {@code 32/10:gap_mm}. */
    static List<Series.At> positions(List<GearPath> paths) {
        List<Series.At> all = new ArrayList<>();
        for (GearPath path : paths) {
            for (String name : ORDER) {
                path.number(name).ifPresent(value -> all.add(new Series.At(path.gear + ":" + name, value)));
            }
        }
        return all;
    }

    /** Back from positions, gears in the order listed. */
    static List<GearPath> of(Series series) {
        Map<String, Map<String, Double>> byGear = new LinkedHashMap<>();
        for (Series.At at : series.values()) {
            int colon = at.at().indexOf(':');
            byGear.computeIfAbsent(at.at().substring(0, colon), gear -> new LinkedHashMap<>())
                    .put(at.at().substring(colon + 1), at.value());
        }
        return byGear.entrySet().stream()
                .map(entry -> new GearPath(entry.getKey(), entry.getValue()))
                .toList();
    }
}
