package groupwright.definition.storage;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The bytes of a file, unchangeable, with their hash. */
public final class Content {
    private final byte[] bytes;
    private final Sha256 sha256;

    private Content(byte[] bytes) {
        this.bytes = bytes;
        this.sha256 = Sha256.of(bytes);
    }

    /** A copy of the bytes. */
    public static Content of(byte[] bytes) {
        return new Content(bytes.clone());
    }

    /** The text in UTF-8. */
    public static Content ofText(String text) {
        return new Content(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Takes over an array nobody else holds. */
    static Content adopt(byte[] bytes) {
        return new Content(bytes);
    }

    /** A copy of the bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** The bytes read as UTF-8; whatever a {@link Snapshot} holds is sound UTF-8. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    public int length() {
        return bytes.length;
    }

    public Sha256 sha256() {
        return sha256;
    }

    ByteBuffer buffer() {
        return ByteBuffer.wrap(bytes).asReadOnlyBuffer();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Content content && content.sha256.equals(sha256);
    }

    @Override
    public int hashCode() {
        return sha256.hashCode();
    }

    @Override
    public String toString() {
        return length() + " bytes, " + sha256;
    }
}
