package groupwright.definition.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What concerns the whole project: names, date, lead concept, and the house rules behind weight, cost and riding.
 *
 * <p>The date is the one that documents carry; nothing reads a clock.
 */
public record Project(
        RecordId id,

        @Help("Version of the file format; this program writes 1") @Limits(least = 1, most = 1000000) @Default("1")
        int format,

        @Help("Name of the project") @Required String name,
        @Help("Who owns the project") @Default("\"\"") String company,

        @Help("What the project is about, in a sentence or two") @Default("\"\"")
        String purpose,

        @Help("Currency of all amounts of money, a code of ISO 4217") @Default("\"EUR\"")
        String currency,

        @Help("Date that documents carry") Optional<LocalDate> date,

        @Help("The concept that documents and verdicts speak of first") @RefersTo(Concept.class)
        Optional<RecordId> leadConcept,

        @Help("Below this speed a rider gets off and walks") @Limits(least = 0.1, most = 20) @Default("4.5")
        Amount walkingSpeed_kmh,

        @Help("Density of the air in ride figures") @Limits(least = 0.3, most = 2) @Default("1.2")
        Amount airDensity_kg_m3,

        @Help("Gears whose ratios lie closer than this are felt as one") @Limits(least = 0, most = 50) @Default("4")
        Amount distinctGears_pct,

        @Help("Growth allowance on an estimated weight") @Limits(least = 0, most = 100) @Default("8")
        Amount allowanceEstimated_pct,

        @Help("Growth allowance on a calculated weight") @Limits(least = 0, most = 100) @Default("4")
        Amount allowanceCalculated_pct,

        @Help("Growth allowance on a weighed weight") @Limits(least = 0, most = 100) @Default("0")
        Amount allowanceWeighed_pct,

        @Help("Spread (one standard deviation) of an estimated weight") @Limits(least = 0, most = 100) @Default("5")
        Amount spreadEstimated_pct,

        @Help("Spread (one standard deviation) of a calculated weight") @Limits(least = 0, most = 100) @Default("2.5")
        Amount spreadCalculated_pct,

        @Help("Spread (one standard deviation) of a weighed weight") @Limits(least = 0, most = 100) @Default("0.5")
        Amount spreadWeighed_pct,

        @Help("Correlation between the errors of any two parts' weights") @Limits(least = 0, most = 1) @Default("0.3")
        Amount weightCorrelation,

        @Help("Wear in dust against that in the dry; a house rule until measured")
        @Limits(least = 0.1, most = 20)
        @Default("1.5")
        Amount wearInDust,

        @Help("Wear in mud against that in the dry; a house rule until measured")
        @Limits(least = 0.1, most = 20)
        @Default("3")
        Amount wearInMud,

        @Help("Wear below freezing against that in the dry; a house rule until measured")
        @Limits(least = 0.1, most = 20)
        @Default("1.2")
        Amount wearInCold,

        @Help("Sets built over the life of the product, which carry the tooling") @Limits(least = 1, most = 1e9)
        Optional<Amount> lifeVolume,

        @Help("Pieces scrapped in production for every hundred good ones") @Limits(least = 0, most = 99) @Default("0")
        Amount scrap_pct,

        @Help("How far the cost of a set may be off") @Limits(least = 0, most = 1e9) @Default("0")
        Amount costBand_minor)
        implements Entry {
    public Project {
        if (!id.equals(RecordId.PROJECT)) {
            throw new Invalid("id", "\"" + id + "\" is not the project", "write project");
        }
        if (!currency.matches("[A-Z]{3}")) {
            throw new Invalid(
                    "currency", "\"" + currency + "\" is no currency code", "write three letters, for example EUR");
        }
    }

    public static final Field<Project, Optional<RecordId>> LEAD_CONCEPT =
            Field.of(Project.class, "leadConcept", Project::leadConcept);
    public static final Field<Project, Amount> WALKING_SPEED =
            Field.of(Project.class, "walkingSpeed_kmh", Project::walkingSpeed_kmh);
    public static final Field<Project, Amount> AIR_DENSITY =
            Field.of(Project.class, "airDensity_kg_m3", Project::airDensity_kg_m3);
    public static final Field<Project, Amount> DISTINCT_GEARS =
            Field.of(Project.class, "distinctGears_pct", Project::distinctGears_pct);
    public static final Field<Project, Amount> ALLOWANCE_ESTIMATED =
            Field.of(Project.class, "allowanceEstimated_pct", Project::allowanceEstimated_pct);
    public static final Field<Project, Amount> ALLOWANCE_CALCULATED =
            Field.of(Project.class, "allowanceCalculated_pct", Project::allowanceCalculated_pct);
    public static final Field<Project, Amount> ALLOWANCE_WEIGHED =
            Field.of(Project.class, "allowanceWeighed_pct", Project::allowanceWeighed_pct);
    public static final Field<Project, Amount> SPREAD_ESTIMATED =
            Field.of(Project.class, "spreadEstimated_pct", Project::spreadEstimated_pct);
    public static final Field<Project, Amount> SPREAD_CALCULATED =
            Field.of(Project.class, "spreadCalculated_pct", Project::spreadCalculated_pct);
    public static final Field<Project, Amount> SPREAD_WEIGHED =
            Field.of(Project.class, "spreadWeighed_pct", Project::spreadWeighed_pct);
    public static final Field<Project, Amount> WEIGHT_CORRELATION =
            Field.of(Project.class, "weightCorrelation", Project::weightCorrelation);
    public static final Field<Project, Amount> WEAR_IN_DUST =
            Field.of(Project.class, "wearInDust", Project::wearInDust);
    public static final Field<Project, Amount> WEAR_IN_MUD = Field.of(Project.class, "wearInMud", Project::wearInMud);
    public static final Field<Project, Amount> WEAR_IN_COLD =
            Field.of(Project.class, "wearInCold", Project::wearInCold);
    public static final Field<Project, Optional<Amount>> LIFE_VOLUME =
            Field.of(Project.class, "lifeVolume", Project::lifeVolume);
    public static final Field<Project, Amount> SCRAP = Field.of(Project.class, "scrap_pct", Project::scrap_pct);
    public static final Field<Project, Amount> COST_BAND =
            Field.of(Project.class, "costBand_minor", Project::costBand_minor);
    public static final Field<Project, String> CURRENCY = Field.of(Project.class, "currency", Project::currency);

    @Override
    public String title() {
        return name;
    }

    @Override
    public String retired() {
        return "";
    }
}
