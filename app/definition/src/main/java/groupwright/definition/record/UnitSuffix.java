package groupwright.definition.record;

import java.util.Map;

/** The unit at the end of a field's name: {@code chainstay_mm} is in mm. */
public final class UnitSuffix {
    private static final Map<String, String> SHOWN = Map.of(
            "pct", "%", "deg", "°", "m2", "m²", "kg_m3", "kg/m³", "kmh", "km/h", "Nm", "N·m", "minor", "minor units");

    private UnitSuffix() {}

    /** As people read it; empty where the name has none. */
    public static String shown(String name) {
        int mark = name.indexOf('_');
        if (mark < 0) {
            return "";
        }
        String suffix = name.substring(mark + 1);
        return SHOWN.getOrDefault(suffix, suffix);
    }
}
