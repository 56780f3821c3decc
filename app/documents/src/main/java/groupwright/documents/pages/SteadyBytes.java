package groupwright.documents.pages;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes chance out of a written file; no byte changes its place. */
final class SteadyBytes {
    /** The library draws six random letters for each subset font. */
    private static final Pattern SUBSET = Pattern.compile("(/(?:BaseFont|FontName)/)([A-Z]{6})(?=\\+)");

    private static final String NO_ID = "00".repeat(16);

    private SteadyBytes() {}

    /** The file with its fonts numbered by first use and with an identifier computed from all its other bytes. */
    static byte[] of(byte[] written) {
        Map<String, String> letters = new LinkedHashMap<>();
        Matcher subset = SUBSET.matcher(new String(written, StandardCharsets.ISO_8859_1));
        String numbered = subset.replaceAll(
                found -> found.group(1) + letters.computeIfAbsent(found.group(2), random -> lettersOf(letters.size())));
        int trailer = numbered.lastIndexOf("/ID");
        String identifier = hash(numbered).substring(0, NO_ID.length());
        String end = numbered.substring(trailer).replace(NO_ID, identifier);
        return (numbered.substring(0, trailer) + end).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String lettersOf(int number) {
        char[] letters = "AAAAAA".toCharArray();
        int rest = number;
        for (int i = letters.length - 1; rest > 0; i--) {
            letters[i] += (char) (rest % 26);
            rest /= 26;
        }
        return new String(letters);
    }

    private static String hash(String file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(file.getBytes(StandardCharsets.ISO_8859_1)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
