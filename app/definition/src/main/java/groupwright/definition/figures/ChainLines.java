package groupwright.definition.figures;

import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ChainLine;
import groupwright.drivetrain.gearing.Crankset;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the rings and cogs of a concept stand beside each other on a bike, as the figure {@link #FIGURE} answers it; for
 * drawings from above.
 *
 * @param rings by rising teeth
 * @param cogs by rising teeth
 */
public record ChainLines(List<Wheel> rings, List<Wheel> cogs) {
    /** The figure that answers it. */
    public static final String FIGURE = "chain-lines";

    private static final String RING = "ring ";
    private static final String COG = "cog ";

    /**
     * A ring or cog.
     *
     * @param lineMm from the middle plane of the frame outwards
     */
    public record Wheel(int teeth, double lineMm) {}

    public ChainLines {
        rings = List.copyOf(rings);
        cogs = List.copyOf(cogs);
    }

    static ChainLines of(Crankset crankset, Cassette cassette, ChainLine line) {
        return new ChainLines(
                crankset.rings().stream()
                        .map(ring -> new Wheel(ring.teeth(), line.ringMm(crankset, ring)))
                        .toList(),
                cassette.cogs().stream()
                        .map(cog -> new Wheel(cog.teeth(), line.cogMm(cassette, cog)))
                        .toList());
    }

    /** Back from what the ledger answers. */
    public static ChainLines of(Series answer) {
        return new ChainLines(wheels(answer, RING), wheels(answer, COG));
    }

    private static List<Wheel> wheels(Series answer, String kind) {
        return answer.values().stream()
                .filter(at -> at.at().startsWith(kind))
                .map(at -> new Wheel(Integer.parseInt(at.at().substring(kind.length())), at.value()))
                .toList();
    }

    Series asSeries() {
        List<Series.At> all = new ArrayList<>();
        rings.forEach(ring -> all.add(new Series.At(RING + ring.teeth(), ring.lineMm())));
        cogs.forEach(cog -> all.add(new Series.At(COG + cog.teeth(), cog.lineMm())));
        return new Series(Unit.MILLIMETRE, all);
    }
}
