package groupwright.definition.assessment;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Field;
import groupwright.definition.record.RiderGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of the program and some more that give back what a record says, so that a test knows every answer. */
final class ToyFigures {
    static final Unit KILOGRAM = new Unit("kg");

    private static final Field<Bike, Optional<Amount>> CHAINSTAY =
            Field.of(Bike.class, "chainstay_mm", Bike::chainstay_mm);

    private ToyFigures() {}

    static Catalogue catalogue() {
        return catalogue(1, 1);
    }

    /** A catalogue whose toy-teeth has this version and gives so many times the teeth of the largest ring. */
    static Catalogue catalogue(int version, double times) {
        List<Figure> figures = new ArrayList<>(Scene.CATALOGUE.all());
        figures.add(toy("toy-mass", Scope.RIDERS)
                .in(KILOGRAM)
                .computedBy(in -> Quantity.of(in.required(in.subject(Scope.RIDERS), RiderGroup.RIDER_MASS), KILOGRAM)));
        figures.add(toy("toy-stay", Scope.CONCEPT, Scope.BIKE)
                .in(Unit.MILLIMETRE)
                .computedBy(in -> Quantity.of(in.required(in.subject(Scope.BIKE), CHAINSTAY), Unit.MILLIMETRE)));
        figures.add(toy("toy-both", Scope.RIDERS, Scope.BIKE)
                .computedBy(in -> Quantity.of(
                        in.required(in.subject(Scope.RIDERS), RiderGroup.RIDER_MASS)
                                + in.required(in.subject(Scope.BIKE), CHAINSTAY),
                        Unit.NONE)));
        figures.add(toy("toy-teeth", Scope.CONCEPT)
                .in(Unit.TEETH)
                .resolution(0.5)
                .version(version)
                .computedBy(in -> Quantity.of(
                        times * in.get(in.subject(Scope.CONCEPT), Concept.RINGS).get(0), Unit.TEETH)));
        figures.add(toy("toy-list", Scope.CONCEPT).computedBy(in -> new Series(Unit.NONE, List.of())));
        figures.add(toy("toy-word", Scope.CONCEPT).computedBy(in -> new Word("good", "")));
        return new Catalogue(figures);
    }

    private static Figure.Builder toy(String id, Scope... scopes) {
        return Figure.named(id, id)
                .of(scopes)
                .formula("what the record says")
                .source("invented for tests")
                .example(id, "");
    }
}
