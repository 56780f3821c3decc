package groupwright.workbench.riders;

import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Shape;
import groupwright.documents.numbers.Reader;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notation;
import groupwright.workbench.notation.Notations;
import groupwright.workbench.riders.RidersSheet.Cell;
import groupwright.workbench.riders.RidersSheet.Kind;
import groupwright.workbench.riders.RidersSheet.Line;
import groupwright.workbench.riders.RidersSheet.Rank;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the rows of the columns: first what one compares, then every other field of the description. */
final class LineReading {
    /** Between a number and its band. */
    static final String BAND = "±";

    static final String WHEEL = "tyre_mm";
    private static final List<String> FIRST = List.of(
            "riderMass_kg",
            "bikeMass_kg",
            "luggage_kg",
            "powerFiveMinutes_W",
            "powerHour_W",
            "powerAllDay_W",
            "peakTorque_Nm",
            "crankLength_mm",
            WHEEL,
            "rollingResistance",
            "dragArea_m2",
            "climbs",
            "dust_pct",
            "yearly_km");
    /** Shown with another field, as drawings of their own, or never edited here. */
    private static final Set<String> ELSEWHERE = Set.of("id", "beadSeat_mm", "terrain", "retired");

    private final Words words;
    private final Reader reader;
    private final Notations notations;
    private final Shape<RiderGroup> shape = RecordKinds.RIDER_GROUP.shape();

    LineReading(View view, Words words) {
        this.words = words;
        this.reader = new Reader(words.locale());
        this.notations = new Notations(words.locale(), view::definition, view.catalogue());
    }

    List<Line> lines(List<RiderGroup> groups) {
        List<Line> lines = new ArrayList<>();
        FIRST.forEach(name -> lines.add(first(name, groups)));
        for (Component component : shape.components()) {
            boolean share = component.name().equals("dust_pct"); // stands in a row of words too
            if (!ELSEWHERE.contains(component.name()) && (share || !FIRST.contains(component.name()))) {
                lines.add(plain(component, FieldWords.label(component), Rank.FURTHER, groups));
            }
        }
        return lines;
    }

    private Line first(String name, List<RiderGroup> groups) {
        String label = words.text("line." + name);
        return switch (name) {
            case WHEEL -> wheel(label, groups);
            case "climbs" -> inForm(label, name, groups, this::climbs);
            case "dust_pct" -> inForm(label, name, groups, this::conditions);
            default -> plain(component(name), label, Rank.MAIN, groups);
        };
    }

    private Component component(String name) {
        return shape.components().get(shape.indexOf(name));
    }

    private Line plain(Component component, String label, Rank rank, List<RiderGroup> groups) {
        boolean number = component.type() instanceof FieldType.Number || component.type() instanceof FieldType.Whole;
        List<Cell> cells = groups.stream()
                .map(group -> {
                    Object value = shape.value(group, shape.indexOf(component.name()));
                    Optional<?> there = value instanceof Optional<?> optional ? optional : Optional.of(value);
                    Notation notation = notations.of(shape, component, group);
                    return new Cell(
                            Address.of(group.id(), component.name()),
                            there,
                            notation.shown(there),
                            unit(component),
                            behind(component.name(), group, notation.shown(there)),
                            words.text("cell.name", label, group.title()),
                            notation);
                })
                .toList();
        return new Line(label, component.name(), rank, number ? Kind.NUMBER : Kind.TEXT, cells);
    }

    /** Coefficients have no unit; their symbol stands there. */
    private String unit(Component component) {
        return switch (component.name()) {
            case "rollingResistance" -> words.text("unit.rollingResistance");
            case "dragArea_m2" -> words.text("unit.dragArea");
            default -> component.unit();
        };
    }

    private String behind(String field, RiderGroup group, String shown) {
        return switch (field) {
            case "powerFiveMinutes_W" -> perKilogram(group.powerFiveMinutes_W(), group);
            case "powerHour_W" -> perKilogram(group.powerHour_W(), group);
            case "powerAllDay_W" -> perKilogram(group.powerAllDay_W(), group);
            case "luggage_kg" -> total(group);
            default -> shown.contains(BAND) ? shown.substring(shown.indexOf(BAND)) : "";
        };
    }

    private String perKilogram(Optional<Amount> power, RiderGroup group) {
        if (power.isEmpty() || group.riderMass_kg().isEmpty()) {
            return "";
        }
        double share = power.get().value() / group.riderMass_kg().get().value();
        return new ShownValue(reader.number(share, 2), "W/kg").text();
    }

    private String total(RiderGroup group) {
        if (group.riderMass_kg().isEmpty() || group.bikeMass_kg().isEmpty()) {
            return "";
        }
        double sum = group.riderMass_kg().get().value()
                + group.bikeMass_kg().get().value()
                + group.luggage_kg().value();
        return words.text("luggage.total", new ShownValue(reader.exact(sum), "kg").text());
    }

    private Line wheel(String label, List<RiderGroup> groups) {
        WheelNotation notation = new WheelNotation(words);
        List<Cell> cells = groups.stream()
                .map(group -> {
                    Optional<WheelNotation.Wheel> wheel = group.tyre_mm()
                            .flatMap(tyre -> group.beadSeat_mm().map(seat -> new WheelNotation.Wheel(tyre, seat)));
                    String measured = group.rollOut_mm()
                            .map(roll -> words.text(
                                    "wheel.measured", new ShownValue(reader.exact(roll.value()), "mm").text()))
                            .orElse("");
                    return new Cell(
                            Address.of(group.id(), WHEEL),
                            wheel,
                            notation.shown(wheel),
                            "",
                            measured,
                            words.text("cell.name", label, group.title()),
                            notation);
                })
                .toList();
        return new Line(label, WHEEL, Rank.MAIN, Kind.NUMBER, cells);
    }

    private Line inForm(String label, String field, List<RiderGroup> groups, Function<RiderGroup, String> text) {
        Notation none = new WheelNotation(words); // never read: the form of the group edits it
        List<Cell> cells = groups.stream()
                .map(group -> new Cell(
                        Address.of(group.id(), field),
                        Optional.of(text.apply(group)),
                        text.apply(group),
                        "",
                        "",
                        words.text("cell.name", label, group.title()),
                        none))
                .toList();
        return new Line(label, field, Rank.MAIN, Kind.IN_FORM, cells);
    }

    private String climbs(RiderGroup group) {
        return group.climbs().stream()
                .map(climb -> new ShownValue(reader.exact(climb.grade_pct().value()), "%").text())
                .collect(Collectors.joining(", "));
    }

    private String conditions(RiderGroup group) {
        double dust = group.dust_pct().value();
        double mud = group.mud_pct().value();
        double cold = group.cold_pct().value();
        return words.text(
                "conditions",
                reader.exact(100 - dust - mud - cold),
                reader.exact(dust),
                reader.exact(mud),
                reader.exact(cold));
    }
}
