package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import java.util.Comparator;

/** Ends and count of a cassette, in teeth and cogs; compared in this order. */
record Ends(int smallest, int largest, int count) implements Comparable<Ends> {
    private static final Comparator<Ends> ORDER = Comparator.comparingInt(Ends::smallest)
            .thenComparingInt(Ends::largest)
            .thenComparingInt(Ends::count);

    static Ends of(Cassette cassette) {
        return new Ends(
                cassette.smallest().teeth(),
                cassette.largest().teeth(),
                cassette.cogs().size());
    }

    @Override
    public int compareTo(Ends other) {
        return ORDER.compare(this, other);
    }
}
