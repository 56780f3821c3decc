package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.drivetrain.chain.ChainLoad;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.wear.ArticulationLoss;
import groupwright.drivetrain.wear.ChainFriction;
import groupwright.drivetrain.wear.GearWork;
import groupwright.drivetrain.wear.Pulleys;
import java.util.List;
import java.util.Optional;

/** What the chain carries, and what bending it costs. All are design estimates, no proof of conformity. */
public final class LoadFigures implements FigureFamily {
    /** Tension of the chain. */
    public static final String CHAIN_TENSION = "chain-tension";

    private static final String LOSS = "articulation-loss";
    private static final String ESTIMATE = "; a design estimate, no proof of conformity: test to current standards";
    private static final Parameter OF = Parameter.choice(
            "of", List.of("peak", "mean"), "peak torque on the smallest ring, or the mean while pedalling on the ride");
    private static final String FRICTION =
            "; friction 0.1, pin radius 1.8 mm, slack run 10 N are assumptions without source, ± 50 %";

    @Override
    public List<Figure> figures() {
        return List.of(tension(), factor(), loss(), difference());
    }

    private static Figure.Builder ofRiders(String id, Unit unit) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .in(unit)
                .with(PredictedRide.LENGTH)
                .with(Riders.HEADWIND);
    }

    private static Figure tension() {
        return ofRiders(CHAIN_TENSION, Unit.NEWTON)
                .with(OF)
                .uses(RideFigures.RIDE)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "peak: (largest crank torque + torque of a motor) / pitch radius of the smallest ring; mean: work at"
                                + " the crank / chain run over the ring while pedalling, on the predicted ride")
                .source("statics; pitch circle: Bhandari, Design of Machine Elements, Example 14.4")
                .leavesOut("impact, the polygon's swing, pull of the cage, shifting under load" + ESTIMATE)
                .example("chain-tension C-901 G-901", "4434")
                .computedBy(in -> in.word(OF.name()).equals("peak") ? peak(in) : mean(in));
    }

    private static Quantity peak(Inputs in) {
        List<Integer> rings = in.get(in.subject(Scope.CONCEPT), Concept.RINGS);
        int ring = rings.get(rings.size() - 1);
        double torque = Gathering.number(
                in, Riders.group(in), RiderGroup.PEAK_TORQUE, "write the largest torque at the cranks in N·m");
        double motor = in.get(Riders.group(in), RiderGroup.ASSIST_TORQUE)
                .map(Amount::value)
                .orElse(0.0);
        double newtons = ChainLoad.tensionOfTorqueN(torque + motor, ChainPitch.BICYCLE_MM, ring);
        return new Quantity(newtons, Unit.NEWTON, "on the ring of " + ring);
    }

    private static Quantity mean(Inputs in) {
        RideSums ride = RideFigures.asked(in, in.subject());
        double travel = ride.chainTravelM();
        if (travel == 0) {
            throw in.missing(
                    Riders.group(in), RiderGroup.TERRAIN, "nothing is pedalled on this ride; add terrain that climbs");
        }
        return Quantity.of(ride.workKj() * 1000 / travel, Unit.NEWTON);
    }

    private static Figure factor() {
        return Names.figure("tensile-factor")
                .of(Scope.CONCEPT, Scope.RIDERS)
                .uses(CHAIN_TENSION)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("8010 N / peak chain tension")
                .source("least tensile strength of a bicycle's chain: 16 CFR 1512.8, 1800 lbf")
                .leavesOut(
                        "fatigue and wear, which break chains far below their tensile strength; impact, shifting under load"
                                + ESTIMATE)
                .resolution(0.01)
                .example("tensile-factor C-901 G-901", "1.81")
                .computedBy(LoadFigures::tensileFactor);
    }

    private static Answer tensileFactor(Inputs in) {
        double peak = in.value(CHAIN_TENSION, in.subject());
        if (peak == 0) {
            throw in.missing(Riders.group(in), RiderGroup.PEAK_TORQUE, "write a torque at the cranks above 0 N·m");
        }
        return Quantity.of(ChainLoad.safetyFactor(ChainLoad.LEAST_TENSILE_US_N, peak), Unit.NONE);
    }

    private static Figure loss() {
        return ofRiders(LOSS, Unit.WATT)
                .uses(RideFigures.RIDE)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "Σ v/p · μ · F · r · 2π/z over the ends of the chain's runs, at the power held for an hour and the middle"
                                + " of the preferred cadences; each gear weighs as much as the work pedalled in it on the predicted ride"
                                + FRICTION)
                .source(
                        "own derivation; falls with 1 / tension as Spicer et al., J. Mechanical Design 123(4), 2001, measured")
                .leavesOut(
                        "bearings, seals, lubricant, crossed running; the level is too low, use differences between concepts"
                                + ESTIMATE)
                .resolution(0.1)
                .band((value, in) -> uncertain(value))
                .example("articulation-loss C-901 G-901", "2.2")
                .computedBy(LoadFigures::lossOf);
    }

    private static Band uncertain(Quantity value) {
        return Band.around(value.value(), Math.abs(value.value()) * ChainFriction.UNCERTAINTY_PCT / 100);
    }

    private static Answer lossOf(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        Gathering all = new Gathering(in);
        Optional<RideSums> ride = all.read(() -> RideFigures.asked(in, in.subject()));
        Optional<Double> power = all.read(() -> Riders.hourPower(in));
        Optional<Double> low = all.number(
                Riders.group(in),
                RiderGroup.CADENCE_PREFERRED_LOW,
                "write the lower end of the preferred cadence in rpm");
        Optional<Double> high = all.number(
                Riders.group(in),
                RiderGroup.CADENCE_PREFERRED_HIGH,
                "write the upper end of the preferred cadence in rpm");
        Optional<Double> guide =
                all.number(concept, DerailleurFields.GUIDE_TEETH, "write the teeth of the guide pulley");
        Optional<Double> tension =
                all.number(concept, DerailleurFields.TENSION_TEETH, "write the teeth of the tension pulley");
        all.end();
        Pulleys pulleys = new Pulleys((int) Math.round(guide.orElseThrow()), (int) Math.round(tension.orElseThrow()));
        double work = 0;
        double lost = 0;
        for (GearWork use : ride.orElseThrow().gearWork()) {
            work += use.workJ();
            lost += use.workJ()
                    * ArticulationLoss.of(
                                    use.gear(),
                                    pulleys,
                                    ChainFriction.ASSUMED,
                                    power.orElseThrow(),
                                    (low.orElseThrow() + high.orElseThrow()) / 2)
                            .lossW();
        }
        if (work == 0) {
            throw in.missing(
                    Riders.group(in), RiderGroup.TERRAIN, "nothing is pedalled on this ride; add terrain that climbs");
        }
        return Quantity.of(lost / work, Unit.WATT);
    }

    private static Figure difference() {
        return ofRiders("articulation-loss-difference", Unit.WATT)
                .with(Reference.AGAINST)
                .uses(LOSS)
                .better(Direction.LOWER_IS_BETTER)
                .formula("articulation-loss - that of the concept compared with; ± 50 %")
                .source("own derivation, see articulation-loss")
                .leavesOut("what articulation-loss leaves out, as far as it differs between the concepts" + ESTIMATE)
                .resolution(0.1)
                .band((value, in) -> uncertain(value))
                .example("articulation-loss-difference C-901 G-901", "0.0")
                .computedBy(in -> Quantity.of(
                        in.value(LOSS, in.subject(), ride(in)) - in.value(LOSS, Reference.subject(in), ride(in)),
                        Unit.WATT));
    }

    /** The length and wind asked for. */
    static Settings ride(Inputs in) {
        return Settings.NONE
                .with(PredictedRide.LENGTH.name(), in.word(PredictedRide.LENGTH.name()))
                .with(Riders.HEADWIND.name(), in.word(Riders.HEADWIND.name()));
    }
}
