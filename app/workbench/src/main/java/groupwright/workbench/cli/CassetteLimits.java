package groupwright.workbench.cli;

import groupwright.drivetrain.search.DriverBody;
import groupwright.drivetrain.search.ForbiddenCogs;
import groupwright.drivetrain.search.ForcedCogs;
import groupwright.drivetrain.search.JumpsNeverShrink;
import groupwright.drivetrain.search.LargestJump;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.LikePositions;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.StepShape;
import groupwright.drivetrain.search.StepsByPosition;
import groupwright.drivetrain.search.WorstMismatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** Options that say what each cassette has to keep; picocli sets the fields. */
final class CassetteLimits {
    private static final String SHAPE = "--shape";
    private static final String TOLERANCE = "--tolerance";

    @Option(names = "--driver", paramLabel = "TEETH", description = "Smallest cog that the driver body takes.")
    private String driver;

    @Option(names = "--with", paramLabel = "TEETH,…", description = "Cogs that each cassette must have.")
    private String with;

    @Option(names = "--without", paramLabel = "TEETH,…", description = "Cogs that no cassette may have.")
    private String without;

    @Option(
            names = "--largest-step",
            paramLabel = "PCT[@TEETH]",
            description = "Largest step in percent; 25@14 counts steps from 14 teeth on.")
    private String largestStep;

    @Option(
            names = "--steps",
            paramLabel = "PCT,…",
            description = "Largest step at each position from the smallest cog on; - leaves one free. Parted by"
                    + " semicolons, numbers may have a decimal comma.")
    private String steps;

    @Option(names = "--largest-jump", paramLabel = "TEETH", description = "Largest difference of neighbouring cogs.")
    private String largestJump;

    @Option(
            names = "--mismatch",
            paramLabel = "MM[@TEETH]",
            description = "Largest phase mismatch of a pair in mm, from so many teeth on.")
    private String mismatch;

    @Option(
            names = "--like-positions",
            paramLabel = "N[@TEETH]",
            description = "Fewest like shift positions of a pair, from so many teeth on.")
    private String likePositions;

    @Option(names = "--jumps-never-shrink", description = "No jump, in teeth, is smaller than the one before it.")
    private boolean jumpsNeverShrink;

    @Option(
            names = SHAPE,
            paramLabel = "SHAPE",
            description = "Course of the steps: constant, growing, or target steps in percent parted by commas.")
    private String shape;

    @Option(
            names = TOLERANCE,
            paramLabel = "POINTS",
            description = "How far steps may be off the shape, in percentage points.")
    private String tolerance;

    /**
     * The limits in the order of the options above.
     *
     * @throws Refusal naming the first that is not understood
     */
    Limits limits() {
        List<Limit> limits = new ArrayList<>();
        add(limits, "--driver", driver, text -> new DriverBody(Words.whole("--driver", text)));
        add(limits, "--with", with, text -> ForcedCogs.of(teeth("--with", text)));
        add(limits, "--without", without, text -> ForbiddenCogs.of(teeth("--without", text)));
        add(limits, "--largest-step", largestStep, text -> {
            Words.From from = Words.from("--largest-step", text);
            return new LargestStep(from.number(), from.teeth());
        });
        add(limits, "--steps", steps, text -> new StepsByPosition(Words.positions("--steps", text)));
        add(limits, "--largest-jump", largestJump, text -> new LargestJump(Words.whole("--largest-jump", text)));
        add(limits, "--mismatch", mismatch, text -> {
            Words.From from = Words.from("--mismatch", text);
            return new WorstMismatch(from.number(), from.teeth());
        });
        add(limits, "--like-positions", likePositions, text -> {
            String[] parts = text.split("@", 2);
            return new LikePositions(
                    Words.whole("--like-positions", parts[0]),
                    parts.length == 1 ? 0 : Words.whole("--like-positions", parts[1]));
        });
        if (jumpsNeverShrink) {
            limits.add(new JumpsNeverShrink());
        }
        addShape(limits);
        return new Limits(limits);
    }

    private static void add(List<Limit> limits, String option, String text, Function<String, Limit> reader) {
        if (text != null) {
            limits.add(Words.checked(option, () -> reader.apply(text)));
        }
    }

    private static List<Integer> teeth(String option, String text) {
        return Arrays.stream(Words.teeth(option, text)).boxed().toList();
    }

    private void addShape(List<Limit> limits) {
        if (shape == null && tolerance == null) {
            return;
        } else if (shape == null) {
            throw Refusal.of(TOLERANCE + " is given without a shape", "add --shape growing, or leave it out");
        } else if (tolerance == null) {
            throw Refusal.of(SHAPE + " is given without a tolerance", "add for example --tolerance 2");
        }
        double points = Words.decimal(TOLERANCE, tolerance);
        limits.add(Words.checked(SHAPE, () -> shape(points)));
    }

    private StepShape shape(double points) {
        return switch (shape.strip()) {
            case "constant" -> new StepShape.Constant(points);
            case "growing" -> new StepShape.Growing(points);
            default -> drawn(points);
        };
    }

    private StepShape drawn(double points) {
        if (!shape.matches("[0-9].*")) {
            throw Refusal.of(
                    SHAPE + ": \"" + shape + "\" is no shape",
                    "write constant, growing, or target steps such as 20,18,18");
        }
        List<OptionalDouble> targets = Words.positions(SHAPE, shape);
        if (targets.stream().anyMatch(OptionalDouble::isEmpty)) {
            throw Refusal.of(SHAPE + ": a drawn shape has a target at each position", "write a number for each hyphen");
        }
        return new StepShape.Drawn(
                targets.stream().map(OptionalDouble::getAsDouble).toList(), points);
    }
}
