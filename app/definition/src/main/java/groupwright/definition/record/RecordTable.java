package groupwright.definition.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * The records of one kind in the order of their ids, in chunks of at most 64, so that one record is replaced by copying
 * one chunk and the list of chunks. Two tables are compared by identity, chunk by chunk.
 *
 * <p>Cost for n records: get O(log n), with O(n/64 + 64), compare O(n/64 + changed chunks).
 */
final class RecordTable {
    private static final int CHUNK = 64;
    static final RecordTable EMPTY = new RecordTable(new Entry[0][], 0);

    private final Entry[][] chunks; // none is empty
    private final int size;

    private RecordTable(Entry[][] chunks, int size) {
        this.chunks = chunks;
        this.size = size;
    }

    static RecordTable of(Collection<? extends Entry> records) {
        Entry[] sorted = records.toArray(Entry[]::new);
        Arrays.sort(sorted, Comparator.comparing(Entry::id));
        int half = CHUNK / 2; // room for new records before a chunk splits
        Entry[][] chunks = new Entry[(sorted.length + half - 1) / half][];
        for (int i = 0; i < chunks.length; i++) {
            chunks[i] = Arrays.copyOfRange(sorted, i * half, Math.min(sorted.length, (i + 1) * half));
        }
        return new RecordTable(chunks, sorted.length);
    }

    int size() {
        return size;
    }

    Optional<Entry> get(RecordId id) {
        int chunk = chunkFor(id);
        if (chunk < 0) {
            return Optional.empty();
        }
        int at = indexIn(chunks[chunk], id);
        return at < 0 ? Optional.empty() : Optional.of(chunks[chunk][at]);
    }

    List<Entry> all() {
        List<Entry> all = new ArrayList<>(size);
        for (Entry[] chunk : chunks) {
            all.addAll(Arrays.asList(chunk));
        }
        return all;
    }

    /** The ids whose numbers lie from {@code first} up to but not {@code end}; O(log n + found). */
    List<RecordId> idsBetween(int first, int end) {
        List<RecordId> found = new ArrayList<>();
        for (int chunk = firstChunkReaching(first); chunk < chunks.length; chunk++) {
            for (Entry entry : chunks[chunk]) {
                int number = entry.id().number();
                if (number >= end) {
                    return found;
                }
                if (number >= first) {
                    found.add(entry.id());
                }
            }
        }
        return found;
    }

    /** Whether any number lies from {@code first} up to but not {@code end}; O(log n). */
    boolean anyBetween(int first, int end) {
        int chunk = firstChunkReaching(first);
        if (chunk < chunks.length) {
            for (Entry entry : chunks[chunk]) { // its last number is at least first
                int number = entry.id().number();
                if (number >= first) {
                    return number < end;
                }
            }
        }
        return false;
    }

    private int firstChunkReaching(int number) {
        int low = 0;
        int high = chunks.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            Entry[] chunk = chunks[middle];
            if (chunk[chunk.length - 1].id().number() < number) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    RecordTable with(Entry record) {
        if (chunks.length == 0) {
            return new RecordTable(new Entry[][] {{record}}, 1);
        }
        int chunk = Math.max(0, chunkFor(record.id()));
        Entry[] old = chunks[chunk];
        int at = indexIn(old, record.id());
        if (at >= 0) {
            Entry[] copy = old.clone();
            copy[at] = record;
            return replaced(chunk, size, copy);
        }
        int gap = -at - 1;
        Entry[] longer = new Entry[old.length + 1];
        System.arraycopy(old, 0, longer, 0, gap);
        longer[gap] = record;
        System.arraycopy(old, gap, longer, gap + 1, old.length - gap);
        if (longer.length <= CHUNK) {
            return replaced(chunk, size + 1, longer);
        }
        int middle = longer.length / 2;
        return replaced(
                chunk,
                size + 1,
                Arrays.copyOfRange(longer, 0, middle),
                Arrays.copyOfRange(longer, middle, longer.length));
    }

    RecordTable without(RecordId id) {
        int chunk = chunkFor(id);
        int at = chunk < 0 ? -1 : indexIn(chunks[chunk], id);
        if (at < 0) {
            return this;
        }
        Entry[] old = chunks[chunk];
        if (old.length == 1) {
            return replaced(chunk, size - 1);
        }
        Entry[] shorter = new Entry[old.length - 1];
        System.arraycopy(old, 0, shorter, 0, at);
        System.arraycopy(old, at + 1, shorter, at, shorter.length - at);
        return replaced(chunk, size - 1, shorter);
    }

    private RecordTable replaced(int chunk, int newSize, Entry[]... by) {
        Entry[][] copy = new Entry[chunks.length - 1 + by.length][];
        System.arraycopy(chunks, 0, copy, 0, chunk);
        System.arraycopy(by, 0, copy, chunk, by.length);
        System.arraycopy(chunks, chunk + 1, copy, chunk + by.length, chunks.length - chunk - 1);
        return new RecordTable(copy, newSize);
    }

    /** The chunk whose range holds the id: the last that begins at or before it; -1 before all. */
    private int chunkFor(RecordId id) {
        int low = 0;
        int high = chunks.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (chunks[middle][0].id().compareTo(id) <= 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return high;
    }

    private static int indexIn(Entry[] chunk, RecordId id) {
        int low = 0;
        int high = chunk.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = chunk[middle].id().compareTo(id);
            if (order == 0) {
                return middle;
            } else if (order < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return -low - 1;
    }

    /** Calls back for each record that is not the same object in both, with nothing on the side where it is absent. */
    static void compare(RecordTable before, RecordTable after, BiConsumer<Optional<Entry>, Optional<Entry>> found) {
        if (before == after) {
            return;
        }
        Walk left = new Walk(before);
        Walk right = new Walk(after);
        while (left.hasMore() || right.hasMore()) {
            if (left.skipsSameChunk(right)) {
                continue;
            }
            if (left.skipsSameRecord(right)) {
                continue;
            }
            int order = left.compare(right);
            Optional<Entry> old = order <= 0 ? Optional.of(left.next()) : Optional.empty();
            Optional<Entry> now = order >= 0 ? Optional.of(right.next()) : Optional.empty();
            if (old.isEmpty() || now.isEmpty() || old.get() != now.get()) {
                found.accept(old, now);
            }
        }
    }

    /** A place in a table while two of them are compared. */
    private static final class Walk {
        private final RecordTable table;
        private int chunk;
        private int at;

        Walk(RecordTable table) {
            this.table = table;
        }

        boolean hasMore() {
            return chunk < table.chunks.length;
        }

        boolean skipsSameChunk(Walk other) {
            if (at != 0
                    || other.at != 0
                    || !hasMore()
                    || !other.hasMore()
                    || table.chunks[chunk] != other.table.chunks[other.chunk]) {
                return false;
            }
            chunk++;
            other.chunk++;
            return true;
        }

        boolean skipsSameRecord(Walk other) {
            if (!hasMore() || !other.hasMore() || peek() != other.peek()) {
                return false;
            }
            next();
            other.next();
            return true;
        }

        int compare(Walk other) {
            if (!hasMore()) {
                return 1;
            }
            return other.hasMore() ? peek().id().compareTo(other.peek().id()) : -1;
        }

        private Entry peek() {
            return table.chunks[chunk][at];
        }

        Entry next() {
            Entry entry = peek();
            if (++at == table.chunks[chunk].length) {
                at = 0;
                chunk++;
            }
            return entry;
        }
    }
}
