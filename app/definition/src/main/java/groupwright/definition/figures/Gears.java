package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.MissingSignal;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The gears of the concept a figure is asked about, as the calculus takes them. */
final class Gears {
    /** From which cog upwards steps count. */
    static final Parameter FROM_TEETH = Parameter.whole(
                    "from-teeth", 0, "only pairs count whose smaller cog has at least so many teeth")
            .within(0, 120);

    private Gears() {}

    static Cassette cassette(Inputs in) {
        return new Cassette(
                in.get(concept(in), Concept.COGS).stream().map(Cog::new).toList());
    }

    static Crankset crankset(Inputs in) {
        return new Crankset(
                in.get(concept(in), Concept.RINGS).stream().map(Chainring::new).toList());
    }

    /** All gears but the excluded ones; missing where none is left. */
    static GearSet inUse(Inputs in) {
        Crankset crankset = crankset(in);
        Cassette cassette = cassette(in);
        Set<Gear> excluded = in.get(concept(in), Concept.EXCLUDED_GEARS).stream()
                .map(gear -> Gear.of(gear.ring(), gear.cog()))
                .collect(Collectors.toSet());
        if (excluded.size() == crankset.rings().size() * cassette.cogs().size()) {
            throw in.missing(concept(in), Concept.EXCLUDED_GEARS, "every gear is excluded; leave at least one in use");
        }
        return new GearSet(crankset, cassette, excluded);
    }

    /** Distance from each cog to the next larger one in mm; one written distance holds for all gaps. */
    static List<Double> cogSpacings(Inputs in) {
        int gaps = cassette(in).cogs().size() - 1;
        List<Double> written = in.get(concept(in), Concept.COG_SPACING).stream()
                .map(Amount::value)
                .toList();
        if (written.isEmpty() && gaps > 0) {
            throw in.missing(
                    concept(in),
                    Concept.COG_SPACING,
                    "write the distance from cog to cog in mm, one or one for each gap");
        }
        return written.size() == 1 ? Collections.nCopies(gaps, written.get(0)) : written;
    }

    /** The steps that count; none for one cog. */
    static List<Step> steps(Inputs in) {
        return Steps.of(cassette(in), in.whole(FROM_TEETH.name()));
    }

    /** Ends a computation that finds too few cogs. */
    static MissingSignal tooFewCogs(Inputs in, int needed) {
        int from = in.parameters().get(FROM_TEETH.name()).map(Integer::parseInt).orElse(0);
        String which = from == 0 ? "" : " from " + from + " teeth upwards";
        return in.missing(concept(in), Concept.COGS, "there are fewer than " + needed + " cogs" + which + "; add one");
    }

    /** A pair of cogs as positions name it, for example {@code 12-14}. */
    static String pair(Step step) {
        return step.smaller().teeth() + "-" + step.larger().teeth();
    }

    private static RecordId concept(Inputs in) {
        return in.subject(Scope.CONCEPT);
    }
}
