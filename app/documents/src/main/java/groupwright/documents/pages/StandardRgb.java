package groupwright.documents.pages;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The colour space our colours are meant in, as a profile a file can carry: sRGB after IEC 61966-2-1, white point and
 * primaries adapted to D50, tone curve as a table. Written here since the one Java brings differs from build to build.
 */
final class StandardRgb {
    private static final int HEADER = 128;
    private static final int TABLE_ENTRY = 12;
    private static final int CURVE_POINTS = 1024;
    private static final double[] WHITE = {0.9642, 1.0, 0.8249};
    private static final double[] RED = {0.4360747, 0.2225045, 0.0139322};
    private static final double[] GREEN = {0.3850649, 0.7168786, 0.0971045};
    private static final double[] BLUE = {0.1430804, 0.0606169, 0.7141733};

    private StandardRgb() {}

    private record Tag(String name, byte[] data) {}

    /** The profile, ICC version 2.1; the same bytes always. */
    static byte[] profile() {
        byte[] curve = curve();
        List<Tag> tags = List.of(
                new Tag("desc", description("sRGB")),
                new Tag("cprt", text("No copyright, use freely")),
                new Tag("wtpt", xyz(WHITE)),
                new Tag("rXYZ", xyz(RED)),
                new Tag("gXYZ", xyz(GREEN)),
                new Tag("bXYZ", xyz(BLUE)),
                new Tag("rTRC", curve),
                new Tag("gTRC", curve),
                new Tag("bTRC", curve));
        int start = HEADER + 4 + tags.size() * TABLE_ENTRY;
        List<Integer> offsets = new ArrayList<>();
        int size = start;
        for (Tag tag : tags) {
            boolean shared = tag.data() == curve && offsets.size() > 6; // the three curves are one
            offsets.add(shared ? offsets.get(6) : size);
            size += shared ? 0 : padded(tag.data().length);
        }
        ByteBuffer profile = ByteBuffer.allocate(size);
        header(profile, size);
        profile.position(HEADER).putInt(tags.size());
        for (int i = 0; i < tags.size(); i++) {
            profile.put(ascii(tags.get(i).name()))
                    .putInt(offsets.get(i))
                    .putInt(tags.get(i).data().length);
        }
        for (int i = 0; i < tags.size(); i++) {
            profile.position(offsets.get(i)).put(tags.get(i).data());
        }
        return profile.array();
    }

    private static void header(ByteBuffer profile, int size) {
        profile.putInt(0, size);
        profile.putInt(8, 0x02100000);
        profile.position(12).put(ascii("mntrRGB XYZ "));
        for (int year : new int[] {2026, 1, 1, 0, 0, 0}) { // fixed, so that equal documents are equal files
            profile.putShort((short) year);
        }
        profile.put(ascii("acsp"));
        profile.position(68).put(xyzNumbers(WHITE));
    }

    private static byte[] curve() {
        ByteBuffer curve = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
        curve.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
        for (int i = 0; i < CURVE_POINTS; i++) {
            double encoded = (double) i / (CURVE_POINTS - 1);
            double linear = encoded <= 0.04045 ? encoded / 12.92 : StrictMath.pow((encoded + 0.055) / 1.055, 2.4);
            curve.putShort((short) Math.round(65535 * linear));
        }
        return curve.array();
    }

    private static byte[] xyz(double[] values) {
        return ByteBuffer.allocate(20)
                .put(ascii("XYZ "))
                .putInt(0)
                .put(xyzNumbers(values))
                .array();
    }

    private static byte[] xyzNumbers(double[] values) {
        ByteBuffer numbers = ByteBuffer.allocate(12);
        for (double value : values) {
            numbers.putInt((int) Math.round(value * 65536));
        }
        return numbers.array();
    }

    private static byte[] text(String words) {
        return ByteBuffer.allocate(8 + words.length() + 1)
                .put(ascii("text"))
                .putInt(0)
                .put(ascii(words))
                .array();
    }

    private static byte[] description(String words) {
        return ByteBuffer.allocate(12 + words.length() + 1 + 8 + 3 + 67)
                .put(ascii("desc"))
                .putInt(0)
                .putInt(words.length() + 1)
                .put(ascii(words))
                .array();
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private static byte[] ascii(String words) {
        return words.getBytes(StandardCharsets.US_ASCII);
    }
}
