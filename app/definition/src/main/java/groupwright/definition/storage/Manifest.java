package groupwright.definition.storage;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The table of contents of an edit folder; the form is in the package comment.
 *
 * @param entries one for each file, sorted by path
 */
record Manifest(List<Entry> entries) {
    /** What the edit does to one file: its hash before and after, empty where there is no file. */
    record Entry(RecordPath path, Optional<Sha256> before, Optional<Sha256> after) {}

    static final String NAME = "manifest";
    private static final String TITLE = "groupwright journal ";
    private static final int VERSION = 1;
    private static final Pattern NEWER = Pattern.compile(TITLE + "([0-9]{1,9})\n(?s:.*)");
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}|-) ([0-9a-f]{64}|-) (\\S+)");
    private static final String CHECKSUM = "checksum ";

    Manifest {
        entries = List.copyOf(entries);
    }

    static Manifest of(List<Change> changes) {
        return new Manifest(changes.stream()
                .map(change -> new Entry(change.path(), change.before(), change.afterHash()))
                .sorted((a, b) -> a.path().compareTo(b.path()))
                .toList());
    }

    /** The new hashes of the files that the edit writes. */
    SortedMap<RecordPath, Sha256> hashes() {
        SortedMap<RecordPath, Sha256> hashes = new TreeMap<>();
        entries.forEach(entry -> entry.after().ifPresent(hash -> hashes.put(entry.path(), hash)));
        return hashes;
    }

    Content encoded() {
        StringBuilder text = new StringBuilder(TITLE + VERSION + "\n");
        for (Entry entry : entries) {
            text.append(hex(entry.before())).append(' ').append(hex(entry.after()));
            text.append(' ').append(entry.path()).append('\n');
        }
        return Content.ofText(text + checksum(text.toString()));
    }

    private static String hex(Optional<Sha256> hash) {
        return hash.map(Sha256::hex).orElse("-");
    }

    private static String checksum(String text) {
        return CHECKSUM + Sha256.of(text.getBytes(StandardCharsets.UTF_8)) + "\n";
    }

    /** Whether the text was written by a program that knows more than we do. */
    static boolean isNewer(String text) {
        Matcher matcher = NEWER.matcher(text);
        return matcher.matches() && Integer.parseInt(matcher.group(1)) > VERSION;
    }

    /** The manifest, or nothing if the text is damaged. */
    static Optional<Manifest> parse(String text) {
        int end = text.lastIndexOf(CHECKSUM);
        if (end < 0 || !text.startsWith(TITLE + VERSION + "\n") || !text.endsWith(checksum(text.substring(0, end)))) {
            return Optional.empty();
        }
        List<Optional<Entry>> entries =
                text.substring(0, end).lines().skip(1).map(Manifest::entry).toList();
        return entries.contains(Optional.<Entry>empty())
                ? Optional.empty()
                : Optional.of(
                        new Manifest(entries.stream().flatMap(Optional::stream).toList()));
    }

    private static Optional<Entry> entry(String line) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        return RecordPath.parse(matcher.group(3))
                .map(path -> new Entry(path, hash(matcher.group(1)), hash(matcher.group(2))));
    }

    private static Optional<Sha256> hash(String hex) {
        return hex.equals("-") ? Optional.empty() : Optional.of(new Sha256(hex));
    }
}
