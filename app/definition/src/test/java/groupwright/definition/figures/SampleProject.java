package groupwright.definition.figures;

import groupwright.definition.record.Entry;
import java.util.ArrayList;
import java.util.List;

/** A project of three concepts with riders and thirty parts; all of it invented. */
final class SampleProject {
    private static final String PARTS = """
            # number, pieces, concepts, mass g, basis, cost EUR cents, tooling kEUR
            1 1 123 58 calculated 510 85
            2 1 123 62 estimated 560 110
            3 1 23 54 estimated 330 48
            4 1 1 58 estimated 345 42
            5 2 123 13 weighed 110 36
            6 1 123 24 calculated 320 28
            7 1 2 122 estimated 1180 190
            8 1 3 123 estimated 1195 205
            9 1 1 120 weighed 1120 60
            10 1 1 98 weighed 810 0
            11 1 1 132 weighed 860 0
            12 1 2 182 calculated 1260 140
            13 1 2 178 estimated 1040 120
            14 1 3 216 calculated 1490 150
            15 1 3 196 estimated 1180 130
            16 1 1 394 calculated 1520 70
            17 1 123 9 weighed 55 0
            18 1 23 262 weighed 890 0
            19 1 1 268 weighed 720 0
            20 1 123 238 calculated 1380 160
            21 1 123 206 calculated 1120 120
            22 1 123 104 calculated 490 30
            23 1 2 74 estimated 560 38
            24 1 1 128 estimated 840 60
            25 1 3 82 estimated 580 38
            26 1 123 84 weighed 610 0
            27 1 123 74 weighed 160 0
            28 1 1 48 weighed 120 0
            29 1 123 0 estimated 220 6
            30 1 123 0 estimated 640 25
            """;

    private SampleProject() {}

    static Asking asking() {
        List<Entry> records = new ArrayList<>(List.of(
                Asking.record(
                        "project",
                        "\"name\": \"Test\", \"lifeVolume\": 60000, \"scrap_pct\": 1.5, \"costBand_minor\": 100"),
                concept("C-001", "[36, 24]", "[11,12,14,16,18,21,24,28,32,38]", 3.6, 34),
                concept("C-002", "[32]", "[10,12,14,16,18,21,25,30,35,40,45]", 3.93, 36),
                concept("C-003", "[34]", "[10,12,14,16,18,21,24,28,32,38,44,50]", 3.6, 41),
                riders("G-001", 83.5, 270, 0.016, 0.38, "steep-15", 15),
                riders("G-002", 94.5, 190, 0.022, 0.45, "steep-12", 12),
                riders("G-003", 107, 150, 0.020, 0.50, "long-8", 8)));
        PARTS.lines()
                .filter(line -> !line.startsWith("#"))
                .map(SampleProject::part)
                .forEach(records::add);
        return Asking.about(records.toArray(Entry[]::new));
    }

    private static Entry concept(String id, String rings, String cogs, double spacing, int capacity) {
        return Asking.record(id, """
                "rings": %s, "cogs": %s, "cogSpacing_mm": [%s], "derailleur": {"overshootSmallest_mm": 1.5,
                "overshootLargest_mm": 1.5, "declaredCapacity_teeth": %d}
                """.formatted(rings, cogs, spacing, capacity));
    }

    private static Entry riders(
            String id, double mass, int power, double rolling, double drag, String climb, int grade) {
        return Asking.record(id, """
                "riderMass_kg": %s, "bikeMass_kg": 13.5, "powerHour_W": %d, "rollingResistance": %s,
                "dragArea_m2": %s, "beadSeat_mm": 622, "tyre_mm": 57, "cadenceMost_rpm": 95,
                "climbs": [{"id": "%s", "grade_pct": %d}]
                """.formatted(mass - 13.5, power, rolling, drag, climb, grade));
    }

    private static Entry part(String line) {
        String[] is = line.strip().split(" ");
        String concepts = "\"C-00" + String.join("\", \"C-00", is[2].split("")) + "\"";
        return Asking.record("P-%03d".formatted(Integer.parseInt(is[0])), """
                "quantity": %s, "concepts": [%s], "mass_g": %s, "basis": "%s", "unitCost_minor": %s,
                "tooling_minor": %d
                """.formatted(
                is[1], concepts.length() > 22 ? "" : concepts, is[3], is[4], is[5], 100_000 * Integer.parseInt(is[6])));
    }
}
