package groupwright.documents.project;

import java.util.Map;

/** All blocks by the names templates use; a new one is one line here and one class. */
final class Blocks {
    static final Map<String, Block> ALL = Map.ofEntries(
            Map.entry("riders", RiderBlocks::groups),
            Map.entry("needs", RiderBlocks::needs),
            Map.entry("concepts", ConceptBlocks::setUps),
            Map.entry("figures", ConceptBlocks::figures),
            Map.entry("gears", GearBlocks::gears),
            Map.entry("gear-ladder", ChartBlocks::gearLadder),
            Map.entry("step-bars", ChartBlocks::stepBars),
            Map.entry("verdicts", RequirementBlocks::verdicts),
            Map.entry("statements", RequirementBlocks::statements),
            Map.entry("open", RequirementBlocks::open),
            Map.entry("coverage", RequirementBlocks::coverage),
            Map.entry("bikes", BikeBlocks::bikes),
            Map.entry("parts", PartBlocks::byGroup),
            Map.entry("claims-that-hold", ClaimBlocks::holding),
            Map.entry("claims-not-to-use", ClaimBlocks::others));

    private Blocks() {}
}
