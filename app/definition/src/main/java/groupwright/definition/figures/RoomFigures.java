package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import java.util.List;
import java.util.Optional;

/** What a bike leaves room for: ring, cog, chain line and tyre. Below 0 it does not fit. */
public final class RoomFigures implements FigureFamily {
    /** Largest ring of the bike less that of the concept. */
    public static final String RING_ROOM = "ring-room";

    /** Smallest cog of the concept less that of the driver body. */
    public static final String DRIVER_ROOM = "driver-room";

    /** How far inside what the bike allows the chain line in front lies. */
    public static final String CHAIN_LINE_ROOM = "chain-line-room";

    /** Widest tyre of the bike less that of the riders. */
    public static final String TYRE_ROOM = "tyre-room";

    @Override
    public List<Figure> figures() {
        return List.of(ring(), driver(), chainLine(), tyre());
    }

    private static Figure.Builder room(String id, Unit unit) {
        return Names.figure(id).in(unit).better(Direction.HIGHER_IS_BETTER).source("common practice, no source");
    }

    private static Figure ring() {
        return room(RING_ROOM, Unit.TEETH)
                .of(Scope.CONCEPT, Scope.BIKE)
                .formula("largest ring that clears the frame - largest ring; below 0 it touches")
                .leavesOut("where the ring stands along the axle: see chain-line-room")
                .example("ring-room C-901 B-901", "0")
                .computedBy(RoomFigures::ringRoom);
    }

    private static Answer ringRoom(Inputs in) {
        int ring = in.get(in.subject(Scope.CONCEPT), Concept.RINGS).get(0);
        double most = Gathering.number(
                in,
                in.subject(Scope.BIKE),
                Bike.LARGEST_RING,
                "write the largest ring that clears the frame, in teeth");
        return Quantity.of(most - ring, Unit.TEETH);
    }

    private static Figure driver() {
        return room(DRIVER_ROOM, Unit.TEETH)
                .of(Scope.CONCEPT, Scope.BIKE)
                .formula("smallest cog - smallest cog that the driver body takes; below 0 it does not go on")
                .leavesOut("whether another driver body can be fitted")
                .example("driver-room C-901 B-901", "0")
                .computedBy(RoomFigures::driverRoom);
    }

    private static Answer driverRoom(Inputs in) {
        int cog = in.get(in.subject(Scope.CONCEPT), Concept.COGS).get(0);
        double least = Gathering.number(
                in,
                in.subject(Scope.BIKE),
                Bike.DRIVER_SMALLEST,
                "write the smallest cog that the driver body takes, in teeth");
        return Quantity.of(cog - least, Unit.TEETH);
    }

    private static Figure chainLine() {
        return room(CHAIN_LINE_ROOM, Unit.MILLIMETRE)
                .of(Scope.CONCEPT, Scope.BIKE)
                .formula(
                        "the smaller of chain line in front - innermost allowed, outermost allowed - chain line in front")
                .leavesOut("the room that each of several rings needs for itself")
                .resolution(0.1)
                .example("chain-line-room C-901 B-901", "2.0")
                .computedBy(RoomFigures::chainLineRoom);
    }

    private static Answer chainLineRoom(Inputs in) {
        RecordId bike = in.subject(Scope.BIKE);
        Gathering all = new Gathering(in);
        Optional<Double> front = all.number(
                in.subject(Scope.CONCEPT),
                Concept.FRONT_CHAIN_LINE,
                "write the chain line in front in mm, for example 52");
        Optional<Double> least =
                all.number(bike, Bike.CHAIN_LINE_LEAST, "write the innermost chain line the bike allows, in mm");
        Optional<Double> most =
                all.number(bike, Bike.CHAIN_LINE_MOST, "write the outermost chain line the bike allows, in mm");
        all.end();
        return Quantity.of(
                Math.min(front.orElseThrow() - least.orElseThrow(), most.orElseThrow() - front.orElseThrow()),
                Unit.MILLIMETRE);
    }

    private static Figure tyre() {
        return room(TYRE_ROOM, Unit.MILLIMETRE)
                .of(Scope.RIDERS, Scope.BIKE)
                .formula("widest tyre that clears the frame - width of the riders' tyre; below 0 it touches")
                .leavesOut("that a tyre can come out wider than its marking, and room for mud")
                .example("tyre-room G-901 B-901", "3")
                .computedBy(RoomFigures::tyreRoom);
    }

    private static Answer tyreRoom(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<Double> tyre =
                all.number(Riders.group(in), RiderGroup.TYRE, "write the width of the tyre in mm, for example 57");
        Optional<Double> most = all.number(
                in.subject(Scope.BIKE), Bike.LARGEST_TYRE, "write the widest tyre that clears the frame, in mm");
        all.end();
        return Quantity.of(most.orElseThrow() - tyre.orElseThrow(), Unit.MILLIMETRE);
    }
}
