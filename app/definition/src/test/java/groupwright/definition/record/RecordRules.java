package groupwright.definition.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** Changes random values so that they keep the rules between the fields of one record. */
final class RecordRules {
    private static final Map<Class<?>, BiConsumer<Draft, Random>> RULES = Map.of(
            Project.class, RecordRules::project,
            Concept.class, RecordRules::concept,
            Criterion.class, RecordRules::criterion,
            Support.class, RecordRules::support,
            GradeBand.class, RecordRules::gradeBand,
            Decision.class, RecordRules::decision,
            Claim.class, RecordRules::claim,
            Bike.class, RecordRules::bike,
            RiderGroup.class, RecordRules::riderGroup);

    private RecordRules() {}

    static void keep(Draft draft, Random random) {
        RULES.getOrDefault(draft.type(), (any, none) -> {}).accept(draft, random);
    }

    private static void project(Draft draft, Random random) {
        draft.set("currency", random.nextBoolean() ? "EUR" : "CHF");
    }

    private static void concept(Draft draft, Random random) {
        List<Integer> rings = new ArrayList<>(new TreeSet<>(draft.<List<Integer>>get("rings")));
        Collections.reverse(rings);
        List<Integer> cogs = List.copyOf(new TreeSet<>(draft.<List<Integer>>get("cogs")));
        draft.set("rings", rings);
        draft.set("cogs", cogs);
        List<Amount> spacing = draft.get("cogSpacing_mm");
        if (spacing.size() > 1) {
            draft.set(
                    "cogSpacing_mm",
                    cogs.size() == 1 ? List.of() : Collections.nCopies(cogs.size() - 1, spacing.get(0)));
        }
        List<ExcludedGear> gears = new ArrayList<>();
        for (ExcludedGear gear : draft.<List<ExcludedGear>>get("excludedGears")) {
            int ring = rings.get(random.nextInt(rings.size()));
            gears.add(new ExcludedGear(gear.id(), ring, cogs.get(random.nextInt(cogs.size()))));
        }
        draft.set("excludedGears", gears);
    }

    private static void criterion(Draft draft, Random random) {
        if (draft.get("comparator") == Criterion.Comparator.BETWEEN) {
            Amount target = draft.get("target");
            draft.set("upper", Optional.of(target.withValue(target.value() + random.nextInt(50))));
        } else {
            draft.set("upper", Optional.empty());
        }
    }

    private static void support(Draft draft, Random random) {
        if (draft.<Optional<?>>get("comparator").isEmpty()) {
            draft.set("limit", Optional.empty());
        } else if (draft.<Optional<?>>get("limit").isEmpty()) {
            draft.set("limit", Optional.of(Amount.of(random.nextInt(100))));
        }
    }

    private static void gradeBand(Draft draft, Random random) {
        Amount from = draft.get("from_pct");
        double low = Math.min(59, from.value());
        draft.set("from_pct", from.withValue(low));
        draft.set("to_pct", Amount.of(Math.min(60, low + 1 + random.nextInt(5))));
    }

    private static void decision(Draft draft, Random random) {
        List<Decision.Option> options = draft.get("options");
        draft.set(
                "choice",
                options.isEmpty() || random.nextBoolean()
                        ? ""
                        : options.get(random.nextInt(options.size())).id());
    }

    private static void claim(Draft draft, Random random) {
        if (draft.<List<?>>get("approvals").isEmpty()) {
            draft.set("state", random.nextBoolean() ? Claim.State.PROPOSED : Claim.State.WITHDRAWN);
        }
    }

    private static void bike(Draft draft, Random random) {
        Optional<Amount> least = draft.get("chainLineLeast_mm");
        Optional<Amount> most = draft.get("chainLineMost_mm");
        if (least.isPresent()
                && most.isPresent()
                && least.get().value() > most.get().value()) {
            draft.set("chainLineLeast_mm", most);
            draft.set("chainLineMost_mm", least);
        }
    }

    private static void riderGroup(Draft draft, Random random) {
        for (String share : List.of("dust_pct", "mud_pct", "cold_pct")) {
            Amount given = draft.get(share);
            draft.set(share, given.withValue(given.value() / 4));
        }
    }
}
