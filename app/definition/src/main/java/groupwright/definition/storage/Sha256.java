package groupwright.definition.storage;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * The SHA-256 of some bytes (FIPS 180-4).
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record Sha256(String hex) {
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");

    public Sha256 {
        if (!FORM.matcher(hex).matches()) {
            throw new IllegalArgumentException("a SHA-256 has 64 lower-case hexadecimal digits, was " + hex);
        }
    }

    /** The hash of the bytes. */
    public static Sha256 of(byte[] bytes) {
        return of(ByteBuffer.wrap(bytes));
    }

    static Sha256 of(ByteBuffer bytes) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(bytes);
            return new Sha256(HexFormat.of().formatHex(digest.digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must offer SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return hex;
    }
}
