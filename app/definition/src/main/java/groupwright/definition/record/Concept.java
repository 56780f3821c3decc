package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** One way the groupset could be built: rings, cogs, chain, derailleur, shift system. */
public record Concept(
        RecordId id,
        @Help("Short name") @Required String title,
        @Help("What sets it apart") @Default("\"\"") String description,

        @Help("Teeth of the chainrings, largest first") @Sized(least = 1, most = 3) @Limits(least = 5, most = 120)
        List<Integer> rings,

        @Help("Teeth of the cogs, smallest first") @Sized(least = 1, most = 14) @Limits(least = 5, most = 80)
        List<Integer> cogs,

        @Help("Distance from cog to cog: one for all, or one for each gap") @Limits(least = 1, most = 10) @Default("[]")
        List<Amount> cogSpacing_mm,

        @Help("Distance from ring to ring") @Limits(least = 1, most = 20)
        Optional<Amount> ringSpacing_mm,

        @Help("Chain line in front: middle of the rings from the centre line of the frame")
        @Limits(least = 30, most = 80)
        Optional<Amount> frontChainLine_mm,

        @Help("Chain in words") @Default("\"\"") String chain,

        @Help("Links of the chain as supplied") @Limits(least = 40, most = 200)
        Optional<Amount> chainSupplied_links,

        @Help("Links kept beyond what the largest ring and cog need, for the way round the pulleys")
        @Limits(least = 0, most = 20)
        @Default("4")
        Amount chainReserve_links,

        @Help("The rear derailleur") Optional<Derailleur> derailleur,
        @Help("How shifts are made") Optional<ShiftSystem> shiftSystem,
        @Help("Gears that are not used") @Default("[]") List<ExcludedGear> excludedGears,

        @Help("Proposed or parked; the lead concept is named by the project") @Default("\"proposed\"")
        State state,

        @Help("Why it stands so") @Default("\"\"") String stateReason,

        @Help("Why it is no longer pursued; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    /** Whether the concept is worked on. */
    public enum State {
        PROPOSED,
        PARKED
    }

    public Concept {
        rings = List.copyOf(rings);
        cogs = List.copyOf(cogs);
        cogSpacing_mm = List.copyOf(cogSpacing_mm);
        excludedGears = List.copyOf(excludedGears);
        for (int i = 1; i < rings.size(); i++) {
            if (rings.get(i) >= rings.get(i - 1)) {
                throw new Invalid(
                        "rings",
                        rings.get(i) + " follows " + rings.get(i - 1) + ", but rings stand largest first",
                        "sort them, each once");
            }
        }
        for (int i = 1; i < cogs.size(); i++) {
            if (cogs.get(i) <= cogs.get(i - 1)) {
                throw new Invalid(
                        "cogs",
                        cogs.get(i) + " follows " + cogs.get(i - 1) + ", but cogs stand smallest first",
                        "sort them, each once");
            }
        }
        if (cogSpacing_mm.size() > 1 && cogSpacing_mm.size() != cogs.size() - 1) {
            throw new Invalid(
                    "cogSpacing_mm",
                    cogSpacing_mm.size() + " spacings for " + cogs.size() + " cogs",
                    "write one spacing, or one for each of the " + (cogs.size() - 1) + " gaps");
        }
        ItemIds.check("excludedGears", excludedGears);
        for (ExcludedGear gear : excludedGears) {
            if (!rings.contains(gear.ring()) || !cogs.contains(gear.cog())) {
                throw new Invalid(
                        "excludedGears." + gear.id(),
                        gear.ring() + "/" + gear.cog() + " is no gear of this concept",
                        "name a ring and a cog it has");
            }
        }
    }

    public static final Field<Concept, List<Integer>> RINGS = Field.of(Concept.class, "rings", Concept::rings);
    public static final Field<Concept, List<Integer>> COGS = Field.of(Concept.class, "cogs", Concept::cogs);
    public static final Field<Concept, List<ExcludedGear>> EXCLUDED_GEARS =
            Field.of(Concept.class, "excludedGears", Concept::excludedGears);
    public static final Field<Concept, List<Amount>> COG_SPACING =
            Field.of(Concept.class, "cogSpacing_mm", Concept::cogSpacing_mm);
    public static final Field<Concept, Optional<Amount>> RING_SPACING =
            Field.of(Concept.class, "ringSpacing_mm", Concept::ringSpacing_mm);
    public static final Field<Concept, Optional<Amount>> FRONT_CHAIN_LINE =
            Field.of(Concept.class, "frontChainLine_mm", Concept::frontChainLine_mm);
    public static final Field<Concept, Optional<Amount>> CHAIN_SUPPLIED =
            Field.of(Concept.class, "chainSupplied_links", Concept::chainSupplied_links);
    public static final Field<Concept, Amount> CHAIN_RESERVE =
            Field.of(Concept.class, "chainReserve_links", Concept::chainReserve_links);
    public static final Field<Concept, Optional<ShiftSystem>> SHIFT_SYSTEM =
            Field.of(Concept.class, "shiftSystem", Concept::shiftSystem);
    public static final Field<Concept, Optional<Derailleur>> DERAILLEUR =
            Field.of(Concept.class, "derailleur", Concept::derailleur);
    public static final Field<Concept, State> STATE = Field.of(Concept.class, "state", Concept::state);
    public static final Field<Concept, String> RETIRED = Field.of(Concept.class, "retired", Concept::retired);
}
