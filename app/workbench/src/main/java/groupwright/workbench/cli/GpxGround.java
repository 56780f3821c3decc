package groupwright.workbench.cli;

import groupwright.drivetrain.terrain.Geodesic;
import groupwright.drivetrain.terrain.GpxProblem;
import groupwright.drivetrain.terrain.GpxReader;
import groupwright.drivetrain.terrain.GpxReading;
import groupwright.drivetrain.terrain.Profile;
import groupwright.drivetrain.terrain.Profiles;
import groupwright.drivetrain.terrain.Smoothing;
import groupwright.drivetrain.terrain.Stretch;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.transform.stream.StreamSource;

/**
 * The ground of a GPX file.
 *
 * @param file its name as it was given
 * @param profile the ground
 * @param problems points that were left out
 */
record GpxGround(String file, Profile profile, List<String> problems) {
    /**
     * Reads a file.
     *
     * @throws Refusal in one sentence, if there is no ground to be had from it
     */
    static GpxGround read(String file, Path path) {
        if (!Files.isRegularFile(path)) {
            throw Refusal.of(
                    file + ": " + (Files.exists(path) ? "is no file" : "does not exist"),
                    "name a recorded track as GPX");
        }
        GpxReading reading = reading(file, path);
        List<String> problems = reading.problems().stream()
                .map(problem -> sentence(file, problem))
                .toList();
        if (reading.segments().isEmpty()) {
            throw Refusal.of(problems.isEmpty() ? file + ": there is no track in it" : problems.get(0), "");
        }
        List<Stretch> stretches = reading.segments().stream()
                .flatMap(segment -> segment.stretch(Geodesic::metres).splitAtPauses(Stretch.PAUSE_S).stream())
                .toList();
        try {
            return new GpxGround(file, Profiles.ofTrace(stretches, Smoothing.USUAL), problems);
        } catch (IllegalArgumentException refused) {
            throw Refusal.of(file + ": " + refused.getMessage(), "");
        }
    }

    private static GpxReading reading(String file, Path path) {
        try (InputStream bytes = Files.newInputStream(path)) {
            return GpxReader.read(new StreamSource(bytes), Files.size(path));
        } catch (IOException failed) {
            throw Refusal.of(file + ": cannot be read (" + failed.getMessage() + ")", "look at its permissions");
        }
    }

    /** Without the full stop, which whoever says it adds. */
    private static String sentence(String file, GpxProblem problem) {
        String sentence = problem.sentence();
        return file + ": " + sentence.substring(0, sentence.length() - 1);
    }
}
