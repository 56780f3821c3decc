package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;

/** Ends and count of a cassette, in teeth and cogs. */
record Ends(int smallest, int largest, int count) {
    static Ends of(Cassette cassette) {
        return new Ends(
                cassette.smallest().teeth(),
                cassette.largest().teeth(),
                cassette.cogs().size());
    }
}
