package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Computation;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Derailleur;
import groupwright.definition.record.Field;
import groupwright.definition.record.Part;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Figures without meaning, one for each way in which an answer can come to depend on something. */
final class ToyFigures {
    static final List<RecordKind<?>> KINDS = List.of(
            RecordKinds.PART,
            RecordKinds.PART,
            RecordKinds.REQUIREMENT,
            RecordKinds.NEED,
            RecordKinds.CONCEPT,
            RecordKinds.RIDER_GROUP,
            RecordKinds.PROJECT);

    private static final Settings NONE = Settings.NONE;

    private ToyFigures() {}

    static Catalogue catalogue() {
        List<Figure> all = new ArrayList<>();
        all.addAll(fields());
        all.addAll(references());
        all.addAll(chains());
        all.addAll(sums());
        all.addAll(banded());
        return new Catalogue(all);
    }

    /** A builder with all that must be said. */
    static Figure.Builder named(String id, Scope... scopes) {
        return Figure.named(id, id).of(scopes).formula("none").source("made up").example(id, "0");
    }

    static Quantity number(double value) {
        return Quantity.of(value, Unit.NONE);
    }

    private static Word ids(List<?> ids) {
        return new Word("ids", ids.toString());
    }

    private static Figure one(String id, Scope scope, Computation computation) {
        return named(id, scope).computedBy(computation);
    }

    private static List<Figure> fields() {
        return List.of(
                one("part-mass", Scope.PART, in -> {
                    RecordId part = in.subject(Scope.PART);
                    return number(in.required(part, Part.MASS) * in.get(part, Part.QUANTITY));
                }),
                one("targets", Scope.REQUIREMENT, in -> {
                    RecordId id = in.subject(Scope.REQUIREMENT);
                    double sum = 0;
                    for (String item : in.items(id, Requirement.CRITERIA)) {
                        Amount target = in.item(id, Requirement.CRITERIA, item, Criterion.TARGET)
                                .orElseThrow();
                        Optional<Amount> upper = in.item(id, Requirement.CRITERIA, item, Criterion.UPPER)
                                .orElseThrow();
                        sum += target.value() + upper.map(Amount::value).orElse(0.0);
                    }
                    return number(sum);
                }),
                one(
                        "whole-list",
                        Scope.REQUIREMENT,
                        in -> ids(in.get(in.subject(Scope.REQUIREMENT), Requirement.CRITERIA))),
                one(
                        "inside",
                        Scope.CONCEPT,
                        in -> number(in.required(
                                in.subject(Scope.CONCEPT),
                                Field.optionalInside(Concept.DERAILLEUR, Derailleur.OVERSHOOT_LARGEST)))),
                named("big-cogs", Scope.CONCEPT)
                        .with(Parameter.whole("from-teeth", 30, "smallest cog that counts"))
                        .computedBy(in -> number(in.get(in.subject(Scope.CONCEPT), Concept.COGS).stream()
                                .filter(cog -> cog >= in.whole("from-teeth"))
                                .count())),
                one("refuses-odd", Scope.PART, in -> {
                    int quantity = in.get(in.subject(Scope.PART), Part.QUANTITY);
                    if (quantity % 2 == 1) {
                        throw new IllegalArgumentException(quantity + " is odd");
                    }
                    return number(quantity);
                }),
                one("divides", Scope.PART, in -> number(1.0 / (in.get(in.subject(Scope.PART), Part.QUANTITY) % 3))));
    }

    private static List<Figure> references() {
        return List.of(
                named("part-count")
                        .computedBy(in -> number(in.all(RecordKinds.PART).size())),
                named("lead").computedBy(in -> {
                    RecordId lead = in.get(RecordId.PROJECT, Project.LEAD_CONCEPT)
                            .orElseThrow(() -> in.missing(RecordId.PROJECT, Project.LEAD_CONCEPT, "name one"));
                    return ids(in.get(lead, Concept.COGS));
                }),
                named("roots").computedBy(in -> ids(in.referringToNone(Part.PARENT))),
                one("children", Scope.PART, in -> ids(in.referring(Part.PARENT, in.subject(Scope.PART)))),
                one("answered-by", Scope.NEED, in -> ids(in.referring(Requirement.ANSWERS, in.subject(Scope.NEED)))),
                one("measured-for", Scope.RIDERS, in -> {
                    Set<RecordId> found = new TreeSet<>(in.referring(Requirement.RIDERS, in.subject(Scope.RIDERS)));
                    found.addAll(in.referringToNone(Requirement.RIDERS));
                    return ids(List.copyOf(found));
                }),
                one("next-one", Scope.PART, in -> {
                    RecordId next = RecordId.of("P", in.subject(Scope.PART).number() + 1);
                    return in.exists(next) ? ids(List.of(in.get(next, Part.QUANTITY))) : ids(List.of());
                }),
                one("circle", Scope.PART, in -> ids(in.circle(Part.PARENT, in.subject(Scope.PART)))),
                named("depth", Scope.PART).uses("depth").computedBy(ToyFigures::depth));
    }

    /** How many parents stand above a part; asks itself about the parent. */
    static Answer depth(Inputs in) {
        RecordId part = in.subject(Scope.PART);
        List<RecordId> circle = in.circle(Part.PARENT, part);
        if (!circle.isEmpty()) {
            throw in.missing(circle.get(0), Part.PARENT, "break the circle " + circle);
        }
        Optional<RecordId> parent = in.get(part, Part.PARENT).filter(in::exists);
        return number(parent.map(p -> 1 + in.value("depth", Subject.of(p))).orElse(0.0));
    }

    private static List<Figure> chains() {
        return List.of(
                one(
                        "cog-count",
                        Scope.CONCEPT,
                        in -> number(
                                in.get(in.subject(Scope.CONCEPT), Concept.COGS).size())),
                named("cog-parity", Scope.CONCEPT)
                        .uses("cog-count")
                        .computedBy(in -> number(in.value("cog-count", in.subject()) % 2)),
                named("parity-word", Scope.CONCEPT)
                        .uses("cog-parity")
                        .computedBy(in -> new Word(in.value("cog-parity", in.subject()) == 0 ? "even" : "odd", "")),
                named("many-or-few", Scope.CONCEPT)
                        .uses("cog-count", "big-cogs", "inside")
                        .computedBy(
                                in -> { // reads one thing or another
                                    Subject subject = in.subject();
                                    return in.value("cog-count", subject) > 2
                                            ? in.ask("big-cogs", subject, NONE.with("from-teeth", "60"))
                                            : in.ask("inside", subject);
                                }),
                named("parities", Scope.RIDERS).level(Level.ASSESSMENT).computedBy(in -> {
                    double odd = in.amount(in.subject(Scope.RIDERS), RiderGroup.LUGGAGE);
                    for (RecordId concept : in.all(RecordKinds.CONCEPT)) {
                        odd += in.value("cog-parity", Subject.of(concept));
                    }
                    return number(odd);
                }));
    }

    private static List<Figure> sums() {
        return List.of(
                named("mass-series", Scope.PART).uses("part-mass").computedBy(in -> {
                    Answer mass = in.ask("part-mass", in.subject());
                    String basis = in.get(in.subject(Scope.PART), Part.BASIS).name();
                    return mass instanceof Quantity quantity
                            ? new Series(Unit.GRAM, List.of(new Series.At(basis, quantity.value())))
                            : new Series(Unit.GRAM, List.of());
                }),
                named("mass-by-basis")
                        .uses("mass-series")
                        .computedBy(in -> in.sum("mass-series", RecordKinds.PART, Subject.NONE)),
                named("mass-in-all")
                        .uses("mass-by-basis")
                        .computedBy(in -> number(((Series) in.ask("mass-by-basis", Subject.NONE))
                                .values().stream().mapToDouble(Series.At::value).sum())));
    }

    private static List<Figure> banded() {
        return List.of(
                one(
                        "weight-of-all",
                        Scope.RIDERS,
                        in -> number(2 * in.required(in.subject(Scope.RIDERS), RiderGroup.RIDER_MASS)
                                + 3 * in.amount(in.subject(Scope.RIDERS), RiderGroup.LUGGAGE))),
                one(
                        "branching",
                        Scope.RIDERS,
                        in -> { // reads other things at an end of the band than in the middle
                            RecordId id = in.subject(Scope.RIDERS);
                            double luggage = in.amount(id, RiderGroup.LUGGAGE);
                            if (luggage > 80) {
                                return number(luggage
                                        + in.get(id, RiderGroup.BEAD_SEAT)
                                                .map(Amount::value)
                                                .orElse(0.0));
                            }
                            return number(luggage * in.amount(RecordId.PROJECT, Project.AIR_DENSITY));
                        }),
                named("branching-figures", Scope.RIDERS)
                        .uses("weight-of-all", "branching")
                        .computedBy(in -> in.amount(in.subject(Scope.RIDERS), RiderGroup.LOADED_FACTOR) > 1
                                ? in.ask("weight-of-all", in.subject())
                                : in.ask("branching", in.subject())),
                named("closed-form", Scope.RIDERS)
                        .uses("weight-of-all")
                        .band((quantity, in) ->
                                Band.around(quantity.value(), in.required(in.subject(Scope.RIDERS), RiderGroup.TYRE)))
                        .computedBy(in -> number(in.value("weight-of-all", in.subject()) + 1)),
                named("only-the-band", Scope.RIDERS)
                        .uses("branching")
                        .computedBy(in -> new Word(
                                "band", in.band("branching", in.subject(), NONE).toString())),
                named("band-first", Scope.RIDERS)
                        .uses("branching", "weight-of-all")
                        .computedBy(in -> {
                            Band band = in.band("weight-of-all", in.subject(), NONE);
                            return band instanceof Band.Between between
                                    ? number(between.high() + in.value("branching", in.subject()))
                                    : Missing.of(new MissingInput(Address.of(in.subject(Scope.RIDERS)), "no band"));
                        }),
                named("traced", Scope.RIDERS)
                        .uses("branching-figures")
                        .computedBy(in -> new Word(
                                "trace",
                                in.trace("branching-figures", in.subject(), NONE)
                                        .toString())),
                one(
                        "spacings",
                        Scope.CONCEPT,
                        in -> number(in.get(in.subject(Scope.CONCEPT), Concept.COG_SPACING).stream()
                                .mapToDouble(Amount::value)
                                .reduce(1, (a, b) -> a * b))));
    }

    /** Every question about records that are there, and about one of each kind that is not. */
    static List<Ask> asks(Catalogue catalogue, Definition definition) {
        List<Ask> asks = new ArrayList<>();
        for (Figure figure : catalogue.all()) {
            List<Subject> subjects = List.of(Subject.NONE);
            if (!figure.scopes().isEmpty()) {
                String letters = figure.scopes().iterator().next().letters();
                List<RecordId> ids = new ArrayList<>(
                        definition.idsBetween(RecordKinds.byLetters(letters).orElseThrow(), 0, Integer.MAX_VALUE));
                ids.add(RecordId.of(letters, 555_555));
                subjects = ids.stream().map(Subject::of).toList();
            }
            for (Subject subject : subjects) {
                asks.add(new Ask(figure, subject, NONE));
                if (!figure.parameters().isEmpty()) {
                    asks.add(new Ask(figure, subject, NONE.with("from-teeth", "50")));
                }
            }
        }
        return asks;
    }
}
