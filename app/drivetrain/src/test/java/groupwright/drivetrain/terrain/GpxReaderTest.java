package groupwright.drivetrain.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.terrain.GpxProblem.Kind;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Enumeration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import javax.xml.transform.stream.StreamSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GpxReaderTest {
    @Test
    void tracksWithExtensionsOfAnyMaker() {
        GpxReading reading = RideData.gpx("road_hilly_excerpt.gpx");
        assertEquals(List.of(), reading.problems());
        assertEquals(1, reading.segments().size());
        List<GeoPoint> points = reading.segments().get(0).points();
        List<RideData.Sample> samples = RideData.samples("road_hilly.csv");
        assertEquals(2700, points.size());
        assertEquals(1_577_865_600, points.get(0).timeS().getAsDouble()); // 2020-01-01T08:00:00Z
        for (int i = 0; i < points.size(); i++) { // README: the two files agree in power, cadence and altitude
            RideData.Sample sample = samples.get(139 + i);
            assertEquals(sample.powerW(), points.get(i).powerW());
            assertEquals(sample.cadenceRpm(), points.get(i).cadenceRpm());
            assertEquals(sample.altitudeM().getAsDouble(), points.get(i).elevationM(), 1e-9);
        }
    }

    @Test
    void olderVersionWithEmptySegmentAndPointsWithoutTime() {
        GpxReading reading = RideData.gpx("karst_hills_walk.gpx");
        assertEquals(List.of(), reading.problems());
        assertEquals(3, reading.segments().size());
        assertTrue(reading.segments().get(0).points().stream()
                .allMatch(point -> point.timeS().isEmpty()));
        assertTrue(reading.segments().get(1).points().stream()
                .allMatch(point -> point.timeS().isPresent()));
    }

    @Test
    void aRouteCountsWhereThereIsNoTrack() {
        String route = "<rte><rtept lat='1' lon='2'><ele>3</ele></rtept></rte>";
        assertEquals(1, read(gpx(route)).segments().size());
        String track = "<trk><trkseg><trkpt lat='1' lon='2'><ele>7</ele></trkpt></trkseg></trk>";
        GpxReading both = read(gpx(route + track));
        assertEquals(1, both.segments().size());
        assertEquals(7, both.segments().get(0).points().get(0).elevationM());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # kind | line | text; \\n is a new line
            NOT_XML          | 1 | this is no XML
            NOT_XML          | 1 | {"gpx": 1}
            NOT_XML          | 3 | <gpx version='1.1'>\\n<trk>\\n</gpx>
            NOT_GPX          | 2 | <?xml version='1.0'?>\\n<kml/>
            NOT_GPX          | 1 | <gpx version='2.0'/>
            NOT_GPX          | 1 | <gpx/>
            DOCUMENT_TYPE    | 2 | <?xml version='1.0'?>\\n<!DOCTYPE gpx [<!ENTITY a "b">]><gpx version='1.1'/>
            NO_POINTS        | 2 | <gpx version='1.1'>\\n<wpt lat='1' lon='2'><ele>3</ele></wpt></gpx>
            NO_ELEVATION     | 2 | <gpx version='1.1'><trk><trkseg>\\n<trkpt lat='1' lon='2'/></trkseg></trk></gpx>
            UNREADABLE_POINT | 1 | <gpx version='1.1'><trk><trkseg><trkpt lat='91' lon='2'><ele>3</ele></trkpt></trkseg></trk></gpx>
            UNREADABLE_POINT | 1 | <gpx version='1.1'><trk><trkseg><trkpt lat='NaN' lon='2'><ele>3</ele></trkpt></trkseg></trk></gpx>
            UNREADABLE_POINT | 1 | <gpx version='1.1'><trk><trkseg><trkpt lon='2'><ele>3</ele></trkpt></trkseg></trk></gpx>
            UNREADABLE_POINT | 1 | <gpx version='1.1'><trk><trkseg><trkpt lat='1' lon='2'><ele>high</ele></trkpt></trkseg></trk></gpx>
            UNREADABLE_POINT | 1 | <gpx version='1.1'><trk><trkseg><trkpt lat='1' lon='2'><ele>3</ele><time>noon</time></trkpt></trkseg></trk></gpx>
            """)
    void problemsHaveAKindAndALine(Kind kind, int line, String text) {
        GpxReading reading = read(text.replace("\\n", "\n"));
        assertEquals(List.of(), reading.segments());
        assertEquals(kind, reading.problems().get(0).kind());
        assertEquals(line, reading.problems().get(0).line());
    }

    @Test
    void problemsSayWhatToDo() {
        String two = "<trkpt lat='1' lon='2'/><trkpt lat='1' lon='2'/><trkpt lat='1' lon='2'><ele>5</ele></trkpt>";
        GpxReading reading = read(gpx("<trk><trkseg>\n" + two + "</trkseg></trk>"));
        assertEquals(1, reading.segments().get(0).points().size());
        assertEquals(
                "line 2: a point has no elevation and is left out, and 1 more like it; export the track with elevations.",
                reading.problems().get(0).sentence());
    }

    @Test
    void aPointBackInTimeIsLeftOut() {
        String points =
                point("2020-01-01T10:00:00Z") + point("2020-01-01T09:59:59Z") + point("2020-01-01T11:00:00+01:00");
        GpxReading reading = read(gpx("<trk><trkseg>" + points + "</trkseg></trk>"));
        assertEquals(2, reading.segments().get(0).points().size()); // the third is the same moment as the first
        assertEquals(Kind.TIME_FALLS, reading.problems().get(0).kind());
    }

    private static String point(String time) {
        return "<trkpt lat='1' lon='2'><ele>3</ele><time>" + time + "</time></trkpt>";
    }

    @Test
    void externalEntitiesAndUnfoldingOnesAreNotRead() {
        String external = "<!DOCTYPE gpx SYSTEM 'file:///etc/hostname'><gpx version='1.1'/>";
        assertEquals(Kind.DOCUMENT_TYPE, read(external).problems().get(0).kind());
        assertEquals(
                Kind.NOT_XML, read(gpx("<trk>&lol;</trk>")).problems().get(0).kind());
        assertEquals(Kind.NOT_XML, read(gpx("\u0001")).problems().get(0).kind());
    }

    @Test
    void largeFilesAreRefusedBeforeTheyAreRead() {
        InputStream untouchable = new InputStream() {
            @Override
            public int read() {
                throw new AssertionError("a file of 200 MB must not be read");
            }
        };
        GpxReading reading = GpxReader.read(new StreamSource(untouchable), 200_000_000);
        assertEquals(Kind.TOO_LARGE, reading.problems().get(0).kind());
        assertFalse(reading.problems().get(0).sentence().contains("line"));
    }

    @Test
    void aSourceLongerThanItSaysIsRefused() {
        byte[] start = "<gpx version='1.1'>".getBytes(StandardCharsets.UTF_8);
        byte[] comment = ("<!--" + " ".repeat(1_000_000) + "-->").getBytes(StandardCharsets.UTF_8);
        InputStream endless = new SequenceInputStream(new Enumeration<>() {
            private boolean started;

            @Override
            public boolean hasMoreElements() {
                return true;
            }

            @Override
            public InputStream nextElement() {
                byte[] next = started ? comment : start;
                started = true;
                return new ByteArrayInputStream(next);
            }
        });
        assertEquals(
                Kind.TOO_LARGE,
                GpxReader.read(new StreamSource(endless), 1000)
                        .problems()
                        .get(0)
                        .kind());
    }

    @Test
    void nestingHasALimit() {
        String deep = "<a>".repeat(5000);
        assertEquals(
                Kind.NOT_GPX,
                read("<gpx version='1.1'>" + deep).problems().get(0).kind());
    }

    @Test
    void wrongBytesAreNoXml() {
        byte[] bytes = {'<', 'g', 'p', 'x', ' ', (byte) 0xff, (byte) 0xfe, '>'};
        GpxReading reading = GpxReader.read(new StreamSource(new ByteArrayInputStream(bytes)), bytes.length);
        assertEquals(Kind.NOT_XML, reading.problems().get(0).kind());
        assertEquals(OptionalDouble.empty(), TracePoint.of(0, 0).timeS());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void brokenFilesGiveProblemsOrPointsButNeverThrow(long seed) {
        var random = new Random(seed);
        var text = new StringBuilder(RideData.text("road_hilly_excerpt.gpx").substring(0, 5000));
        for (int i = 1 + random.nextInt(20); i > 0; i--) {
            text.setCharAt(random.nextInt(text.length()), (char) (1 + random.nextInt(126)));
        }
        GpxReading reading = read(text.toString()); // cut short, so that it is never well formed
        assertFalse(reading.problems().isEmpty());
        assertTrue(reading.problems().stream()
                .allMatch(problem -> problem.sentence().endsWith(".")));
    }

    private static String gpx(String content) {
        return "<gpx version='1.1' xmlns='http://www.topografix.com/GPX/1/1'>" + content + "</gpx>";
    }

    private static GpxReading read(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return GpxReader.read(new StreamSource(new ByteArrayInputStream(bytes)), bytes.length);
    }
}
