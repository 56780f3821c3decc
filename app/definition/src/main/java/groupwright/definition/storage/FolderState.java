package groupwright.definition.storage;

import java.nio.file.attribute.FileTime;
import java.util.Set;
import java.util.TreeSet;

/** Sizes and times of a project's files at one moment, to find cheaply what may have changed since. */
public final class FolderState {
    /** Times of files are this coarse on some file systems (FAT): a file as young may change and keep its time. */
    private static final long COARSEST_MILLIS = 2000;

    private final Listing listing;
    private final long takenMillis;

    FolderState(Listing listing, long takenMillis) {
        this.listing = listing;
        this.takenMillis = takenMillis;
    }

    /**
     * The names that may not be what they were, below the project folder and with {@code /}: other size, time or file, come
     * or gone, or so young at the earlier moment that their time would not show a change. Linear in the number of files.
     */
    public Set<String> mayDifferFrom(FolderState earlier) {
        Set<String> names = new TreeSet<>();
        listing.entries().forEach((path, stamp) -> {
            if (!stamp.equals(earlier.listing.entries().get(path)) || earlier.isYoung(stamp.modified())) {
                names.add(path);
            }
        });
        names.addAll(
                missing(earlier.listing.entries().keySet(), listing.entries().keySet()));
        names.addAll(missing(earlier.listing.top(), listing.top()));
        names.addAll(missing(listing.top(), earlier.listing.top()));
        return names;
    }

    private static Set<String> missing(Set<String> wanted, Set<String> names) {
        Set<String> missing = new TreeSet<>(wanted);
        missing.removeAll(names);
        return missing;
    }

    private boolean isYoung(FileTime modified) {
        return modified.toMillis() > takenMillis - COARSEST_MILLIS;
    }
}
