package groupwright.workbench.cli;

import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows gears and steps of rings and cogs; needs no project. */
@Command(
        name = "gears",
        customSynopsis = "groupwright gears --rings 32 --cogs 10,12,14,… (--bead-seat 622 --tyre 57 | --roll-out 2312)"
                + " [--loaded-factor 1] [--json]",
        sortOptions = false,
        description = "Show gears, steps and shift positions of rings and cogs; needs no project.")
final class GearsCommand implements Callable<Exit> {
    private static final String WHEEL = "write --bead-seat 622 --tyre 57, or --roll-out 2312";

    private final Surroundings surroundings;

    @Option(names = "--rings", required = true, paramLabel = "TEETH,…", description = "Teeth of the rings.")
    private String rings;

    @Option(
            names = "--cogs",
            required = true,
            paramLabel = "TEETH,…",
            description = "Teeth of the cogs, smallest first.")
    private String cogs;

    @Option(names = "--bead-seat", paramLabel = "MM", description = "Bead seat diameter of the rim, ISO 5775.")
    private String beadSeat;

    @Option(names = "--tyre", paramLabel = "MM", description = "Width of the tyre, ISO 5775.")
    private String tyre;

    @Option(names = "--roll-out", paramLabel = "MM", description = "Roll-out of one wheel turn as measured.")
    private String rollOut;

    @Option(
            names = "--loaded-factor",
            paramLabel = "SHARE",
            description = "Roll-out under the rider as a share of that by the marking; 1 if left out.")
    private String loadedFactor;

    @Mixin
    private CommonOptions options;

    GearsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() {
        Crankset crankset = Words.checked("--rings", () -> Crankset.of(Words.teeth("--rings", rings)));
        Cassette cassette = Words.checked("--cogs", () -> Cassette.of(Words.teeth("--cogs", cogs)));
        GearsReport report = new GearsReport(wheel(), GearSet.of(crankset, cassette));
        surroundings.answer(
                options.isForMachine() ? JsonText.of(report.json()) : report.text(new Reader(Locale.ENGLISH)));
        return Exit.FINE;
    }

    private Wheel wheel() {
        if (rollOut != null) {
            if (beadSeat != null || tyre != null || loadedFactor != null) {
                throw Refusal.of("the wheel is given twice", WHEEL);
            }
            return Words.checked("--roll-out", () -> Wheel.ofRollOut(Words.number("--roll-out", rollOut)));
        } else if (beadSeat == null || tyre == null) {
            throw Refusal.of(
                    "the wheel is " + (beadSeat == null && tyre == null ? "not given" : "given by half"), WHEEL);
        }
        double bead = Words.number("--bead-seat", beadSeat);
        double width = Words.number("--tyre", tyre);
        double loaded = loadedFactor == null ? 1 : Words.number("--loaded-factor", loadedFactor);
        return Words.checked("--bead-seat, --tyre", () -> Wheel.ofMarking(bead, width, loaded));
    }
}
