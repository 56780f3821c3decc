package groupwright.drivetrain.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.xml.transform.stream.StreamSource;

/** The recorded rides among the test resources; what they are and whose says the README.md beside them. */
public final class RideData {
    private RideData() {}

    /** A line of a recorded ride; an empty field of the file is empty here. */
    public record Sample(
            double timeS,
            OptionalDouble powerW,
            OptionalDouble cadenceRpm,
            OptionalDouble altitudeM,
            double distanceM) {}

    public static List<Sample> samples(String name) {
        List<String> lines = text(name).lines().toList();
        List<String> columns = List.of(lines.get(0).split(",", -1));
        List<Sample> samples = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] fields = line.split(",", -1);
            samples.add(new Sample(
                    number(columns, fields, "time_s").orElseThrow(),
                    number(columns, fields, "power_W"),
                    number(columns, fields, "cadence_rpm"),
                    number(columns, fields, "altitude_m"),
                    number(columns, fields, "distance_m").orElseThrow()));
        }
        return samples;
    }

    /** The ground of a recorded ride, samples without altitude left out. */
    public static Stretch stretch(String name) {
        return stretch(samples(name));
    }

    public static Stretch stretch(List<Sample> samples) {
        return new Stretch(samples.stream()
                .filter(sample -> sample.altitudeM().isPresent())
                .map(sample ->
                        TracePoint.of(sample.distanceM(), sample.altitudeM().getAsDouble(), sample.timeS()))
                .toList());
    }

    public static GpxReading gpx(String name) {
        byte[] bytes = text(name).getBytes(StandardCharsets.UTF_8);
        return GpxReader.read(new StreamSource(new java.io.ByteArrayInputStream(bytes)), bytes.length);
    }

    public static String text(String name) {
        try (InputStream in = RideData.class.getResourceAsStream("/ridedata/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static OptionalDouble number(List<String> columns, String[] fields, String column) {
        int i = columns.indexOf(column);
        return i < 0 || fields[i].isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(fields[i]));
    }
}
