package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Something wrong with a GPX file.
 *
 * @param kind what is wrong
 * @param line line of the file, counted from 1, where it was seen first (where a tag ends); 0 if it concerns the whole file
 * @param count how often it was seen, 1 or more
 * @param detail what was found, empty if the kind says all
 */
public record GpxProblem(Kind kind, int line, int count, String detail) {

    /** Kinds of problems, in words: what is wrong, and what to do. */
    public enum Kind {
        /** The file is larger than is read. */
        TOO_LARGE("the file is too large", "split it or leave out points"),
        /** The file is no well-formed XML. */
        NOT_XML("the file is no XML", "export the track again as GPX 1.1"),
        /** The file is XML but no GPX 1.0 or 1.1. */
        NOT_GPX("the file is no GPX 1.0 or 1.1", "export the track again as GPX 1.1"),
        /** The file has a document type, which could make a reader fetch or unfold other things. */
        DOCUMENT_TYPE("the file has a document type declaration, which is not read", "take out the line with DOCTYPE"),
        /** There is no point of a track or route that could be used. */
        NO_POINTS("there is no point of a track or route to use", "export a recorded track"),
        /** Points without elevation are left out. */
        NO_ELEVATION("a point has no elevation and is left out", "export the track with elevations"),
        /** Points whose place, elevation or time cannot be read are left out. */
        UNREADABLE_POINT("a point cannot be read and is left out", "correct its numbers"),
        /** Points earlier than the one before are left out. */
        TIME_FALLS("a point is earlier than the one before and is left out", "put the points in the order of time");

        private final String wrong;
        private final String remedy;

        Kind(String wrong, String remedy) {
            this.wrong = wrong;
            this.remedy = remedy;
        }
    }

    /** Throws {@link IllegalArgumentException} if line or count is out of range. */
    public GpxProblem {
        Bounds.count("the line of a problem", line, 0, Integer.MAX_VALUE);
        Bounds.count("the count of a problem", count, 1, Integer.MAX_VALUE);
    }

    GpxProblem again() {
        return new GpxProblem(kind, line, count + 1, detail);
    }

    /** One sentence: where, what, what to do. */
    public String sentence() {
        return "%s%s%s%s; %s."
                .formatted(
                        line == 0 ? "" : "line " + line + ": ",
                        kind.wrong,
                        detail.isEmpty() ? "" : " (" + detail + ")",
                        count == 1 ? "" : ", and " + (count - 1) + " more like it",
                        kind.remedy);
    }
}
