package groupwright.documents.numbers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * From one unit to another of the same dimension, exact as the units are defined.
 *
 * <p>Formula: {@code value · factor}, computed as {@code value · (from / common) / (to / common)}.
 *
 * <p>Source: NIST SP 811 (2008), appendix B.8; the inch (25.4 mm), the foot and the pound (0.45359237 kg) are exact by the
 * international yard and pound agreement of 1959, the pound-force by the standard acceleration of 9.80665 m/s² (3rd CGPM,
 * 1901). Temperatures and other scales with an offset are left out.
 */
public final class Conversion {
    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 0.3048;
    private static final double MILE_M = 1609.344;
    private static final double POUND_KG = 0.45359237;
    private static final double HOUR_S = 3600;
    private static final double STANDARD_GRAVITY = 9.80665;

    /** What a unit measures, and how many of the dimension's common unit make one of it, as a fraction. */
    private record Size(String dimension, double numerator, double denominator) {}

    private static final Map<String, Size> SIZES = sizes();

    private final Size from;
    private final Size to;

    private Conversion(Size from, Size to) {
        this.from = from;
        this.to = to;
    }

    private static Map<String, Size> sizes() {
        Map<String, Size> sizes = new TreeMap<>();
        sizes.put("m", new Size("length", 1, 1));
        sizes.put("mm", new Size("length", 1, 1000));
        sizes.put("cm", new Size("length", 1, 100));
        sizes.put("km", new Size("length", 1000, 1));
        sizes.put("in", new Size("length", INCH_M, 1));
        sizes.put("ft", new Size("length", FOOT_M, 1));
        sizes.put("mi", new Size("length", MILE_M, 1));
        sizes.put("kg", new Size("mass", 1, 1));
        sizes.put("g", new Size("mass", 1, 1000));
        sizes.put("lb", new Size("mass", POUND_KG, 1));
        sizes.put("oz", new Size("mass", POUND_KG, 16));
        sizes.put("m/s", new Size("speed", 1, 1));
        sizes.put("km/h", new Size("speed", 1000, HOUR_S));
        sizes.put("mph", new Size("speed", MILE_M, HOUR_S));
        sizes.put("s", new Size("time", 1, 1));
        sizes.put("min", new Size("time", 60, 1));
        sizes.put("h", new Size("time", HOUR_S, 1));
        sizes.put("N", new Size("force", 1, 1));
        sizes.put("lbf", new Size("force", POUND_KG * STANDARD_GRAVITY, 1));
        return sizes;
    }

    /**
     * The way from one unit to another.
     *
     * @param from symbol of the unit as figures show it, for example {@code km/h}
     * @param to symbol of the other
     * @return nothing where one of them is not known here, or they measure different things; a unit to itself always is
     *     there
     */
    public static Optional<Conversion> between(String from, String to) {
        Size one = SIZES.get(from);
        Size other = SIZES.get(to);
        if (from.equals(to)) {
            Size same = new Size("", 1, 1);
            return Optional.of(new Conversion(same, same));
        }
        return one != null && other != null && one.dimension.equals(other.dimension)
                ? Optional.of(new Conversion(one, other))
                : Optional.empty();
    }

    /** The units an answer in this unit can be shown in, itself among them, in alphabetical order. */
    public static List<String> unitsFor(String unit) {
        Size size = SIZES.get(unit);
        return size == null
                ? List.of(unit)
                : SIZES.entrySet().stream()
                        .filter(entry -> entry.getValue().dimension.equals(size.dimension))
                        .map(Map.Entry::getKey)
                        .toList();
    }

    /** All units that can be converted, in alphabetical order. */
    public static List<String> units() {
        return List.copyOf(SIZES.keySet());
    }

    /**
     * A value in the other unit.
     *
     * @param value in the first unit
     */
    public double of(double value) {
        return from.equals(to) ? value : value * from.numerator * to.denominator / (from.denominator * to.numerator);
    }

    /**
     * How many further decimals keep the resolution of a value: 1 m shown in mm needs three fewer, 1 mm in inches two more.
     *
     * @return the smallest whole number, maybe below 0, for which a step in the last decimal is at most as large as before
     */
    public int furtherDecimals() {
        return (int) Math.ceil(-Math.log10(of(1)) - 1e-9);
    }
}
