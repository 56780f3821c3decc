package groupwright.documents.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A style or script as it stands in every document.
 *
 * @param text begins and ends with a line end; nothing in it can end its element
 */
record Enclosed(String text) {
    Enclosed {
        if (text.contains("</") || text.contains("<!--") || text.contains("\r")) {
            throw new IllegalArgumentException("a style or script holds a sign that would end it early");
        }
    }

    /** Reads one that stands beside this class. */
    static Enclosed read(String name) {
        try (InputStream stream = Enclosed.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is not on the class path");
            }
            return new Enclosed("\n" + new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n"));
        } catch (IOException broken) {
            throw new UncheckedIOException(name + " cannot be read", broken);
        }
    }

    /** What a policy calls it: SHA-256 in base 64 (Content Security Policy Level 3, 2.3.1). */
    String hash() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has SHA-256
            throw new IllegalStateException(impossible);
        }
    }
}
