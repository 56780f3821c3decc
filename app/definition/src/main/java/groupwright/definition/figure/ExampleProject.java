package groupwright.definition.figure;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Climb;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Derailleur;
import groupwright.definition.record.ExcludedGear;
import groupwright.definition.record.GradeBand;
import groupwright.definition.record.Part;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.ShiftSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A small invented project, about which each figure has its example: C-901, G-901, B-901, N-901, R-901, K-901, P-901
 * to P-904. Its numbers are round, so that examples can be checked by hand.
 */
public final class ExampleProject {
    static final RecordId CONCEPT = RecordId.of("C", 901);
    static final RecordId RIDERS = RecordId.of("G", 901);
    private static final RecordId CASSETTE = RecordId.of("P", 901);

    private ExampleProject() {}

    /** The project. */
    public static Definition definition() {
        return Definition.of(
                project(),
                List.of(
                        concept(),
                        riders(),
                        bike(),
                        ExampleStatements.need(),
                        ExampleStatements.requirement(),
                        ExampleStatements.claim(),
                        part(901, "Cassette", Optional.empty(), 1, Optional.empty(), Part.Basis.ESTIMATED, 0, 0),
                        part(902, "Cog cluster", Optional.of(CASSETTE), 2, some(100), Part.Basis.ESTIMATED, 300, 0),
                        part(903, "Chain", Optional.empty(), 1, some(250), Part.Basis.WEIGHED, 1_000, 0),
                        part(904, "Cranks", Optional.empty(), 1, some(500), Part.Basis.CALCULATED, 2_400, 260_000)));
    }

    private static Project project() {
        return new Project(
                RecordId.PROJECT,
                1,
                "Example",
                "",
                "Invented, to check figures by hand",
                "EUR",
                Optional.of(LocalDate.of(2026, 1, 1)),
                Optional.of(CONCEPT),
                Amount.of(4.5),
                Amount.of(1.2),
                Amount.of(4),
                Amount.of(8),
                Amount.of(4),
                Amount.of(0),
                Amount.of(5),
                Amount.of(2.5),
                Amount.of(0.5),
                Amount.of(0.3),
                Amount.of(1.5),
                Amount.of(3),
                Amount.of(1.2),
                some(1000),
                Amount.of(1),
                Amount.of(50));
    }

    private static Concept concept() {
        return new Concept(
                CONCEPT,
                "Two rings, seven cogs",
                "",
                List.of(40, 20),
                List.of(10, 12, 15, 18, 21, 25, 30),
                List.of(Amount.of(4)),
                some(7),
                some(47),
                "",
                some(112),
                Amount.of(6),
                Optional.of(derailleur()),
                Optional.of(
                        new ShiftSystem(7, ShiftSystem.Actuation.CABLE, some(3.5), some(1.15), some(20), some(0.3))),
                List.of(new ExcludedGear("x1", 40, 30)),
                Concept.State.PROPOSED,
                "",
                "");
    }

    private static Derailleur derailleur() {
        return new Derailleur(
                some(-20),
                some(-74),
                some(-8),
                some(-28),
                some(0),
                some(-66),
                some(42),
                some(38),
                some(-93),
                some(100),
                some(14),
                some(14),
                some(0),
                some(-170),
                Derailleur.UpperPivot.FIXED,
                Optional.empty(),
                Optional.empty(),
                some(1.5),
                some(1.5),
                Amount.of(0.5),
                some(45),
                some(32),
                some(10));
    }

    private static RiderGroup riders() {
        return new RiderGroup(
                RIDERS,
                "Riders",
                "",
                5,
                some(65),
                some(10),
                Amount.of(5),
                some(300),
                some(200),
                some(120),
                some(180),
                some(60),
                some(75),
                some(90),
                some(100),
                some(170),
                some(622),
                some(57),
                some(2000),
                Amount.of(1),
                some(0.01),
                some(0.4),
                Amount.of(0.95),
                List.of(new Climb("wall", "The wall", Amount.of(10), some(1), "gravel", Optional.empty())),
                List.of(band("down", -10, -2, 40), band("flat", -2, 2, 20), band("up", 2, 10, 40)),
                some(50),
                Amount.of(0),
                Amount.of(0),
                Amount.of(0),
                some(4000),
                Optional.empty(),
                "invented",
                "");
    }

    private static GradeBand band(String id, double from, double to, double share) {
        return new GradeBand(id, Amount.of(from), Amount.of(to), Amount.of(share));
    }

    private static Bike bike() {
        return new Bike(
                RecordId.of("B", 901),
                "Bike",
                some(435),
                some(40),
                "148 x 12",
                some(10),
                some(45),
                some(45),
                some(55),
                some(40),
                some(60),
                some(-8),
                some(-28),
                some(0),
                Amount.of(0),
                "invented",
                "");
    }

    private static Part part(
            int number,
            String title,
            Optional<RecordId> parent,
            int quantity,
            Optional<Amount> mass,
            Part.Basis basis,
            int costMinor,
            int toolingMinor) {
        return new Part(
                RecordId.of("P", number),
                title,
                parent,
                "",
                List.of(CONCEPT),
                quantity,
                mass,
                "",
                basis,
                0,
                Optional.empty(),
                Optional.empty(),
                some(costMinor),
                List.of(),
                Amount.of(toolingMinor),
                Optional.empty(),
                List.of(),
                "",
                "");
    }

    private static Optional<Amount> some(double value) {
        return Optional.of(Amount.of(value));
    }
}
