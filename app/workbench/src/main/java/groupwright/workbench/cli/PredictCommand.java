package groupwright.workbench.cli;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Scope;
import groupwright.definition.figures.RideFigures;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Predicts the rides of rider groups with concepts. */
@Command(
        name = "predict",
        customSynopsis = "groupwright predict PROJECT [C-001 …] [--riders G-001] [--gpx FILE | --length KM]"
                + " [--headwind KMH] [--json]",
        sortOptions = false,
        description = {
            "Predict a ride for each concept and rider group: speed, cadence, shifts, time on foot.",
            "The ground is the group's terrain, or a recorded track."
        })
final class PredictCommand implements Callable<Exit> {
    private static final String LEAD = "lead";

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "CONCEPT",
            description = "Only these concepts, parked ones too; lead stands for the lead concept.")
    private List<String> concepts = List.of();

    @Option(names = "--riders", split = ",", paramLabel = "G-001,…", description = "Only these rider groups.")
    private List<String> riders = List.of();

    @Option(names = "--gpx", paramLabel = "FILE", description = "Ride this recorded track instead of the terrain.")
    private String gpx;

    @Option(names = "--length", paramLabel = "KM", description = "Length of the ride on terrain; 40 km if left out.")
    private String length;

    @Option(
            names = "--headwind",
            paramLabel = "KMH",
            description = "Wind along the road against the riders, all the way; below 0 from behind.")
    private String headwind;

    @Mixin
    private CommonOptions options;

    PredictCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        if (gpx != null && length != null) {
            throw Refusal.of("the track of --gpx has a length of its own", "leave --length out");
        }
        Settings settings =
                with("headwind", "--headwind", headwind, with("ride-length", "--length", length, Settings.NONE));
        Optional<GpxGround> ground =
                Optional.ofNullable(gpx).map(file -> GpxGround.read(file, surroundings.path(file)));
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> ride(opened, ground, settings));
    }

    private static Settings with(String parameter, String option, String text, Settings settings) {
        return text == null ? settings : settings.with(parameter, ValueText.number(Words.number(option, text)));
    }

    private Exit ride(OpenProject opened, Optional<GpxGround> ground, Settings settings) {
        RidesReport report = new RidesReport(opened, asks(opened, ground, settings), ground);
        List<Problem> leftOut = report.leftOut();
        leftOut.forEach(surroundings::say);
        surroundings.answer(
                options.isForMachine() ? JsonText.of(report.json()) : report.text(new Reader(Locale.ENGLISH)));
        return leftOut.isEmpty() ? Exit.FINE : Exit.REFUSED;
    }

    private List<Ask> asks(OpenProject opened, Optional<GpxGround> ground, Settings settings) {
        Figure figure = ground.map(track -> RideFigures.rideOn(track.profile()))
                .orElseGet(
                        () -> opened.view().catalogue().find(RideFigures.RIDE).orElseThrow());
        try {
            Selection selection = new Selection(Map.of(
                    Scope.CONCEPT, RecordChoice.of(opened.definition(), RecordKinds.CONCEPT, named(opened)),
                    Scope.RIDERS, RecordChoice.of(opened.definition(), RecordKinds.RIDER_GROUP, riders)));
            return selection.subjects(figure.scopes(), opened.definition()).stream()
                    .map(subject -> new Ask(figure, subject, settings))
                    .toList();
        } catch (Invalid invalid) {
            throw Refusal.of(invalid);
        }
    }

    private List<String> named(OpenProject opened) {
        return concepts.stream()
                .map(name -> name.equals(LEAD) ? opened.lead().text() : name)
                .toList();
    }
}
