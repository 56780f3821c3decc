package groupwright.definition.figures;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Derailleur;
import groupwright.definition.record.Field;
import java.util.Optional;

/** The fields of a concept's derailleur, as figures read them. */
final class DerailleurFields {
    static final Field<Concept, Optional<Amount>> PIVOT_X = inside(Derailleur.PIVOT_X);
    static final Field<Concept, Optional<Amount>> PIVOT_Y = inside(Derailleur.PIVOT_Y);
    static final Field<Concept, Optional<Amount>> HANGER_X = inside(Derailleur.HANGER_X);
    static final Field<Concept, Optional<Amount>> HANGER_Y = inside(Derailleur.HANGER_Y);
    static final Field<Concept, Optional<Amount>> HANGER_ANGLE = inside(Derailleur.HANGER_ANGLE);
    static final Field<Concept, Optional<Amount>> PATH_DIRECTION = inside(Derailleur.PATH_DIRECTION);
    static final Field<Concept, Optional<Amount>> PATH_SLOPE = inside(Derailleur.PATH_SLOPE);
    static final Field<Concept, Optional<Amount>> GUIDE_OFFSET = inside(Derailleur.GUIDE_OFFSET);
    static final Field<Concept, Optional<Amount>> GUIDE_ANGLE = inside(Derailleur.GUIDE_ANGLE);
    static final Field<Concept, Optional<Amount>> PULLEY_DISTANCE = inside(Derailleur.PULLEY_DISTANCE);
    static final Field<Concept, Optional<Amount>> GUIDE_TEETH = inside(Derailleur.GUIDE_TEETH);
    static final Field<Concept, Optional<Amount>> TENSION_TEETH = inside(Derailleur.TENSION_TEETH);
    static final Field<Concept, Optional<Amount>> STOP_FORWARD = inside(Derailleur.STOP_FORWARD);
    static final Field<Concept, Optional<Amount>> STOP_REARWARD = inside(Derailleur.STOP_REARWARD);
    static final Field<Concept, Optional<Amount>> UPPER_PIVOT_SMALLEST = inside(Derailleur.UPPER_PIVOT_SMALLEST);
    static final Field<Concept, Optional<Amount>> UPPER_PIVOT_LARGEST = inside(Derailleur.UPPER_PIVOT_LARGEST);
    static final Field<Concept, Optional<Derailleur.UpperPivot>> UPPER_PIVOT =
            Field.inside(Concept.DERAILLEUR, Derailleur.UPPER_PIVOT);

    private DerailleurFields() {}

    private static Field<Concept, Optional<Amount>> inside(Field<Derailleur, Optional<Amount>> field) {
        return Field.optionalInside(Concept.DERAILLEUR, field);
    }
}
