package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** A part or a group of parts: what it weighs and costs, and how well that is known. */
public record Part(
        RecordId id,
        @Help("What it is") @Required String title,

        @Help("The assembly it belongs to") @RefersTo(Part.class)
        Optional<RecordId> parent,

        @Help("Group it is budgeted in, for example cassette") @Default("\"\"")
        String group,

        @Help("Concepts that use it; empty means all") @RefersTo(Concept.class) @Default("[]")
        List<RecordId> concepts,

        @Help("Pieces in its assembly") @Limits(least = 0, most = 10000) @Default("1")
        int quantity,

        @Help("Weight of one piece") @Limits(least = 0, most = 100000)
        Optional<Amount> mass_g,

        @Help("What state the weight holds for, for example chain at 118 links") @Default("\"\"")
        String configuration,

        @Help("Estimated, calculated or weighed") @Default("\"estimated\"")
        Basis basis,

        @Help("How many were weighed") @Limits(least = 0, most = 1e9) @Default("0")
        int weighed,

        @Help("Standard deviation of what was weighed") @Limits(least = 0, most = 10000)
        Optional<Amount> spread_g,

        @Help("Growth allowance of this part where it differs from the house rule") @Limits(least = 0, most = 100)
        Optional<Amount> allowance_pct,

        @Help("Cost of one piece, in cents or the like") @Limits(least = 0, most = 1e12)
        Optional<Amount> unitCost_minor,

        @Help("Cost of one piece from some quantity on") @Default("[]")
        List<PriceBreak> priceBreaks,

        @Help("Tools and moulds, in cents or the like") @Limits(least = 0, most = 1e14) @Default("0")
        Amount tooling_minor,

        @Help("Weeks from order to delivery") @Limits(least = 0, most = 200)
        Optional<Amount> leadTime_weeks,

        @Help("Requirements that decide how it is made") @RefersTo(Requirement.class) @Default("[]")
        List<RecordId> requirements,

        @Help("Remarks") @Default("\"\"") String note,

        @Help("Why it is no longer used; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    /** How a weight is known. */
    public enum Basis {
        ESTIMATED,
        CALCULATED,
        WEIGHED
    }

    public Part {
        concepts = List.copyOf(concepts);
        priceBreaks = List.copyOf(priceBreaks);
        requirements = List.copyOf(requirements);
        ItemIds.check("priceBreaks", priceBreaks);
    }

    public static final Field<Part, Optional<RecordId>> PARENT = Field.of(Part.class, "parent", Part::parent);
    public static final Field<Part, List<RecordId>> CONCEPTS = Field.of(Part.class, "concepts", Part::concepts);
    public static final Field<Part, Integer> QUANTITY = Field.of(Part.class, "quantity", Part::quantity);
    public static final Field<Part, Optional<Amount>> MASS = Field.of(Part.class, "mass_g", Part::mass_g);
    public static final Field<Part, Basis> BASIS = Field.of(Part.class, "basis", Part::basis);
    public static final Field<Part, Optional<Amount>> SPREAD = Field.of(Part.class, "spread_g", Part::spread_g);
    public static final Field<Part, Optional<Amount>> ALLOWANCE =
            Field.of(Part.class, "allowance_pct", Part::allowance_pct);
    public static final Field<Part, Optional<Amount>> UNIT_COST =
            Field.of(Part.class, "unitCost_minor", Part::unitCost_minor);
    public static final Field<Part, Amount> TOOLING = Field.of(Part.class, "tooling_minor", Part::tooling_minor);
    public static final Field<Part, String> RETIRED = Field.of(Part.class, "retired", Part::retired);
}
