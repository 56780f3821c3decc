package groupwright.documents.trace;

/**
 * One place in a document where a number stands.
 *
 * @param entry the entry's number, from 1
 * @param occurrence counts the places of that entry, from 1
 */
public record Use(int entry, int occurrence) {
    public Use {
        if (entry < 1 || occurrence < 1) {
            throw new IllegalArgumentException("entry and occurrence count from 1, were " + entry + ", " + occurrence);
        }
    }

    /** Name of the anchor at this place. */
    public String anchor() {
        return "u" + entry + "-" + occurrence;
    }

    /** Name of the anchor at the entry. */
    public String entryAnchor() {
        return entryAnchor(entry);
    }

    /** Name of the anchor at an entry. */
    public static String entryAnchor(int number) {
        return "n" + number;
    }
}
