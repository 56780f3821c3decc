package groupwright.drivetrain.terrain;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.xml.datatype.DatatypeConstants;
import javax.xml.datatype.DatatypeFactory;
import javax.xml.datatype.XMLGregorianCalendar;
import javax.xml.stream.XMLStreamReader;

/** One point while it is read: texts of its children, numbers at its end. */
final class GpxPoint {
    private static final Set<String> CHILDREN = Set.of("ele", "time", "power", "cad", "cadence");
    private static final int LONGEST_TEXT = 64;
    private static final double MS_PER_S = 1000;

    private final Map<String, String> texts = new HashMap<>();
    private final StringBuilder text = new StringBuilder();
    private final DatatypeFactory dates = DatatypeFactory.newDefaultInstance();
    private boolean open;
    private boolean collecting;
    private int line;

    int line() {
        return line;
    }

    void start(int atLine, String latitude, String longitude) {
        texts.clear();
        texts.put("lat", latitude == null ? "" : latitude);
        texts.put("lon", longitude == null ? "" : longitude);
        open = true;
        line = atLine;
    }

    void startChild(String name) {
        collecting = open && CHILDREN.contains(name);
        text.setLength(0);
    }

    void text(XMLStreamReader xml) {
        if (collecting && text.length() <= LONGEST_TEXT) {
            int room = LONGEST_TEXT + 1 - text.length();
            text.append(xml.getTextCharacters(), xml.getTextStart(), Math.min(room, xml.getTextLength()));
        }
    }

    void endChild(String name) {
        if (collecting) {
            texts.put(name, text.toString().strip());
            collecting = false;
        }
    }

    /** The point; empty if it has no elevation. */
    Optional<GeoPoint> finish() {
        open = false;
        collecting = false;
        OptionalDouble elevation = number("ele");
        if (elevation.isEmpty()) {
            return Optional.empty();
        }
        Place place = new Place(
                number("lat").orElseThrow(() -> new IllegalArgumentException("it has no latitude")),
                number("lon").orElseThrow(() -> new IllegalArgumentException("it has no longitude")));
        OptionalDouble cadence = number("cad").isPresent() ? number("cad") : number("cadence");
        return Optional.of(new GeoPoint(place, elevation.getAsDouble(), seconds(), number("power"), cadence));
    }

    private OptionalDouble number(String name) {
        String written = texts.getOrDefault(name, "");
        if (written.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(written));
        } catch (NumberFormatException unreadable) {
            throw new IllegalArgumentException("%s is no number: %s".formatted(name, written), unreadable);
        }
    }

    /** Seconds since 1970 of an xsd:dateTime; without a zone it is taken as UTC, which GPX asks for. */
    private OptionalDouble seconds() {
        String written = texts.getOrDefault("time", "");
        if (written.isEmpty()) {
            return OptionalDouble.empty();
        }
        XMLGregorianCalendar time;
        try {
            time = dates.newXMLGregorianCalendar(written);
        } catch (IllegalArgumentException unreadable) {
            throw new IllegalArgumentException("time is no date with time: " + written, unreadable);
        }
        if (time.getTimezone() == DatatypeConstants.FIELD_UNDEFINED) {
            time.setTimezone(0);
        }
        return OptionalDouble.of(time.toGregorianCalendar().getTimeInMillis() / MS_PER_S);
    }
}
