package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Scope;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Derailleur;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.derailleur.Hanger;
import groupwright.drivetrain.derailleur.Mechanism;
import groupwright.drivetrain.derailleur.Point;
import groupwright.drivetrain.derailleur.UpperPivot;
import java.util.Optional;

/** The concept's derailleur on the hanger of the bike a figure is asked about. */
final class Mounting {
    private final Inputs in;
    private final RecordId concept;
    private final RecordId bike;

    Mounting(Inputs in) {
        this.in = in;
        this.concept = in.subject(Scope.CONCEPT);
        this.bike = in.subject(Scope.BIKE);
    }

    /** The mechanism as it hangs on the bike; everything missing is named at once. */
    Mechanism onBike() {
        Gathering all = new Gathering(in);
        Optional<Mechanism> stated = all.read(this::stated);
        Optional<Hanger> hanger = all.read(this::hangerOfBike);
        all.end();
        try {
            return stated.orElseThrow().mountedOn(hanger.orElseThrow());
        } catch (IllegalArgumentException impossible) {
            throw in.missing(bike, Bike.HANGER_X, impossible.getMessage() + "; correct the hanger of the bike");
        }
    }

    private Mechanism stated() {
        Gathering all = new Gathering(in);
        Optional<Hanger> hanger = all.read(this::hangerStated);
        Optional<Double> pivotX = number(
                all,
                DerailleurFields.PIVOT_X,
                "write how far before the axle the cage pivot stands at the smallest cog, in mm");
        Optional<Double> pivotY = number(
                all,
                DerailleurFields.PIVOT_Y,
                "write how far above the axle the cage pivot stands at the smallest cog, in mm");
        Optional<Double> direction = angle(all, DerailleurFields.PATH_DIRECTION, "the direction of the pivot's path");
        Optional<Double> slope =
                angle(all, DerailleurFields.PATH_SLOPE, "the slope of the pivot's path, 0 where it is axial");
        Optional<Double> offset = number(
                all, DerailleurFields.GUIDE_OFFSET, "write how far the guide pulley is from the cage pivot, in mm");
        Optional<Double> guideAngle =
                angle(all, DerailleurFields.GUIDE_ANGLE, "where the guide pulley lies from the cage line");
        Optional<Double> distance =
                number(all, DerailleurFields.PULLEY_DISTANCE, "write the distance of the pulley centres in mm");
        Optional<Double> guide = number(all, DerailleurFields.GUIDE_TEETH, "write the teeth of the guide pulley");
        Optional<Double> tension = number(all, DerailleurFields.TENSION_TEETH, "write the teeth of the tension pulley");
        Optional<Double> forward = angle(all, DerailleurFields.STOP_FORWARD, "the cage's forward stop");
        Optional<Double> rearward = angle(all, DerailleurFields.STOP_REARWARD, "the cage's rearward stop");
        Optional<UpperPivot> upper = all.read(this::upperPivot);
        all.end();
        try {
            return new Mechanism(
                    hanger.orElseThrow(),
                    new Point(pivotX.orElseThrow(), pivotY.orElseThrow()),
                    direction.orElseThrow(),
                    slope.orElseThrow(),
                    offset.orElseThrow(),
                    guideAngle.orElseThrow(),
                    distance.orElseThrow(),
                    (int) Math.round(guide.orElseThrow()),
                    (int) Math.round(tension.orElseThrow()),
                    forward.orElseThrow(),
                    rearward.orElseThrow(),
                    upper.orElseThrow());
        } catch (IllegalArgumentException impossible) {
            throw in.missing(concept, Concept.DERAILLEUR, impossible.getMessage() + "; correct the derailleur");
        }
    }

    private UpperPivot upperPivot() {
        if (in.get(concept, DerailleurFields.UPPER_PIVOT)
                .map(kind -> kind == Derailleur.UpperPivot.FIXED)
                .orElse(true)) {
            return new UpperPivot.Fixed();
        }
        Gathering all = new Gathering(in);
        Optional<Double> smallest =
                angle(all, DerailleurFields.UPPER_PIVOT_SMALLEST, "the turn of the upper pivot at the smallest cog");
        Optional<Double> largest =
                angle(all, DerailleurFields.UPPER_PIVOT_LARGEST, "the turn of the upper pivot at the largest cog");
        all.end();
        return new UpperPivot.Turning(smallest.orElseThrow(), largest.orElseThrow());
    }

    private Hanger hangerStated() {
        return hanger(
                concept,
                DerailleurFields.HANGER_X,
                DerailleurFields.HANGER_Y,
                DerailleurFields.HANGER_ANGLE,
                " of the bike on which the derailleur was measured");
    }

    private Hanger hangerOfBike() {
        return hanger(bike, Bike.HANGER_X, Bike.HANGER_Y, Bike.HANGER_ANGLE, "");
    }

    private <R extends Entry> Hanger hanger(
            RecordId record,
            Field<R, Optional<Amount>> x,
            Field<R, Optional<Amount>> y,
            Field<R, Optional<Amount>> turn,
            String whose) {
        Gathering all = new Gathering(in);
        Optional<Double> forward =
                all.number(record, x, "write how far before the axle the hanger bolt stands" + whose + ", in mm");
        Optional<Double> up =
                all.number(record, y, "write how far above the axle the hanger bolt stands" + whose + ", in mm");
        Optional<Double> angle =
                all.number(record, turn, "write how the hanger's stop is turned" + whose + ", in degrees");
        all.end();
        return new Hanger(new Point(forward.orElseThrow(), up.orElseThrow()), angle.orElseThrow());
    }

    private Optional<Double> angle(Gathering all, Field<Concept, Optional<Amount>> field, String what) {
        return number(all, field, "write " + what + " in degrees");
    }

    private Optional<Double> number(Gathering all, Field<Concept, Optional<Amount>> field, String remedy) {
        return all.number(concept, field, remedy);
    }
}
