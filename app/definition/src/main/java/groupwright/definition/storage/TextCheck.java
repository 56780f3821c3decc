package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** Whether bytes are a text file as we want it: not empty, strict UTF-8 (RFC 3629), no byte order mark, no zero byte. */
final class TextCheck {
    private static final String SAVE_AS_UTF8 = "save it as UTF-8 without byte order mark";

    private final String file;
    private final String id;
    private final byte[] bytes;

    private TextCheck(String file, String id, byte[] bytes) {
        this.file = file;
        this.id = id;
        this.bytes = bytes;
    }

    /** The first thing wrong with the bytes, if anything; linear in their number. */
    static Optional<Problem> problem(String file, String id, byte[] bytes) {
        return new TextCheck(file, id, bytes).problem();
    }

    private Optional<Problem> problem() {
        if (bytes.length == 0) {
            return at(0, "is empty (0 bytes)", "bring back an earlier version or delete the file");
        }
        if (bytes.length > Snapshot.MOST_BYTES) {
            return at(0, "is larger than 4 MiB", "keep large material in other files and refer to it");
        }
        return mark().or(this::zero).or(this::malformed);
    }

    private Optional<Problem> mark() {
        if (startsWith("efbbbf")) {
            return at(0, "starts with a byte order mark (EF BB BF)", SAVE_AS_UTF8);
        }
        if (startsWith("fffe0000") || startsWith("0000feff")) {
            return at(0, "is UTF-32", SAVE_AS_UTF8);
        }
        return startsWith("fffe") || startsWith("feff") ? at(0, "is UTF-16", SAVE_AS_UTF8) : Optional.empty();
    }

    private boolean startsWith(String hex) {
        byte[] start = HexFormat.of().parseHex(hex);
        return bytes.length >= start.length && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
    }

    /** Zero bytes are sound UTF-8, but come from UTF-16 without mark or from a disk that lost the content. */
    private Optional<Problem> zero() {
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                return at(i, "holds a zero byte at offset " + i, "bring back an earlier version or " + SAVE_AS_UTF8);
            }
        }
        return Optional.empty();
    }

    private Optional<Problem> malformed() {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(Math.min(8192, bytes.length));
        CoderResult result = decoder.decode(in, out, true);
        while (result.isOverflow()) {
            out.clear();
            result = decoder.decode(in, out, true);
        }
        if (!result.isError()) {
            return Optional.empty();
        }
        int offset = in.position();
        return at(offset, "is not UTF-8 (byte %02X at offset %d)".formatted(bytes[offset], offset), SAVE_AS_UTF8);
    }

    /** A problem at a byte; all before it is sound, so that lines and columns can be counted. */
    private Optional<Problem> at(int offset, String wrong, String remedy) {
        if (offset == 0) {
            return Optional.of(new Problem(file, 0, 0, id, "", wrong, remedy));
        }
        String before = new String(bytes, 0, offset, StandardCharsets.UTF_8);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        return Optional.of(new Problem(file, line, column, id, "", wrong, remedy));
    }
}
