package groupwright.definition.history;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Edits a product manager might make in a day, at random. */
final class RandomChange {
    private final Random random;

    RandomChange(Random random) {
        this.random = random;
    }

    /** Several of them. */
    Definition some(Definition definition) {
        Definition after = definition;
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            after = one(after);
        }
        return after;
    }

    private Definition one(Definition definition) {
        return switch (random.nextInt(14)) {
            case 0, 1 -> cogs(definition);
            case 2 -> set(definition, one(definition, RecordKinds.CONCEPT), "rings", List.of(28 + random.nextInt(8)));
            case 3, 4 -> mass(definition);
            case 5 -> riders(definition);
            case 6 -> target(definition);
            case 7 ->
                set(definition, one(definition, RecordKinds.REQUIREMENT), "state", of(Requirement.State.values()));
            case 8 -> set(definition, one(definition, RecordKinds.REQUIREMENT), "riders", someRiders(definition));
            case 9 -> set(definition, RecordId.PROJECT, "leadConcept", one(definition, RecordKinds.CONCEPT));
            case 10 -> claim(definition);
            case 11 ->
                definition.without(one(
                        definition,
                        of(RecordKinds.PART, RecordKinds.REQUIREMENT, RecordKinds.RIDER_GROUP, RecordKinds.CLAIM)));
            case 12 -> add(definition);
            default ->
                set(definition, one(definition, RecordKinds.REQUIREMENT), "rationale", "note " + random.nextInt());
        };
    }

    private Definition add(Definition definition) {
        return switch (random.nextInt(3)) {
            case 0 ->
                definition.with(Scene.record(
                        definition.nextId(RecordKinds.PART).text(),
                        "\"quantity\": 2, \"mass_g\": {\"value\": " + random.nextInt(90) + ", \"plusMinus\": 3}"));
            case 1 ->
                definition.with(Scene.requirement(
                        definition.nextId(RecordKinds.REQUIREMENT).text(), """
                    "criteria": [{"id": "k1", "figure": "gear-range", "comparator": "at-least", "target": %d}]""".formatted(400 + random.nextInt(200))));
            default ->
                definition.with(Scene.record(
                        definition.nextId(RecordKinds.CLAIM).text(), "\"wording\": \"{{gear-range lead}} range\""));
        };
    }

    private Definition cogs(Definition definition) {
        RecordId id = one(definition, RecordKinds.CONCEPT);
        Concept concept = definition.get(id, Concept.class).orElseThrow();
        List<Integer> cogs = new ArrayList<>(concept.cogs());
        int last = cogs.size() - 1;
        cogs.set(last, cogs.get(last - 1) + 1 + random.nextInt(8));
        Definition bare = set(definition, id, "excludedGears", List.of()); // one may name the old cog
        return set(bare, id, "cogs", cogs);
    }

    private Definition mass(Definition definition) {
        RecordId id = one(definition, RecordKinds.PART);
        return random.nextBoolean()
                ? set(definition, id, "mass_g", new Amount(random.nextInt(300), random.nextInt(9)))
                : set(definition, id, "basis", of(Part.Basis.values()));
    }

    private Definition riders(Definition definition) {
        RecordId id = one(definition, RecordKinds.RIDER_GROUP);
        RiderGroup group = definition.get(id, RiderGroup.class).orElseThrow();
        return switch (random.nextInt(3)) {
            case 0 -> set(definition, id, "riderMass_kg", Amount.of(60 + random.nextInt(40)));
            case 1 -> set(definition, id, "rollingResistance", new Amount(0.02, random.nextInt(4) / 1000.0));
            default -> set(definition, id, "retired", group.isCurrent() ? "gone" : "");
        };
    }

    private Definition target(Definition definition) {
        RecordId id = one(definition, RecordKinds.REQUIREMENT);
        List<Criterion> criteria =
                definition.get(id, Requirement.class).orElseThrow().criteria();
        if (criteria.isEmpty()) {
            return definition;
        }
        Criterion first = criteria.get(0);
        Address at = Address.of(id, "criteria", first.id(), "target");
        double factor = 0.9 + 0.2 * random.nextDouble();
        return first.upper().isPresent()
                ? definition
                : definition.with(at, Optional.of(Amount.of(first.target().value() * factor)));
    }

    private Definition claim(Definition definition) {
        RecordId id = one(definition, RecordKinds.CLAIM);
        Claim claim = definition.get(id, Claim.class).orElseThrow();
        return set(definition, id, "wording", claim.wording() + "!");
    }

    private List<RecordId> someRiders(Definition definition) {
        return random.nextInt(3) == 0 ? List.of() : List.of(one(definition, RecordKinds.RIDER_GROUP));
    }

    private static Definition set(Definition definition, RecordId id, String field, Object value) {
        return definition.with(Address.of(id, field), Optional.of(value));
    }

    private RecordId one(Definition definition, RecordKind<?> kind) {
        List<? extends Entry> all = definition.all(kind);
        return all.get(random.nextInt(all.size())).id();
    }

    @SafeVarargs
    private <T> T of(T... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
