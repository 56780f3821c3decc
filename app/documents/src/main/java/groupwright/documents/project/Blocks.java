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
            Map.entry("voices", VoiceBlocks::voices),
            Map.entry("why-chosen", DecisionBlocks::whyChosen),
            Map.entry("decisions", DecisionBlocks::decisions),
            Map.entry("scores", DecisionBlocks::scores),
            Map.entry("yardsticks", YardstickBlocks::yardsticks),
            Map.entry("verdict-grid", CoverageBlocks::grid),
            Map.entry("verdict-counts", CoverageBlocks::counts),
            Map.entry("need-coverage", CoverageBlocks::needs),
            Map.entry("unanswered-needs", CoverageBlocks::unanswered),
            Map.entry("gaps", CoverageBlocks::gaps),
            Map.entry("statement-advice", CoverageBlocks::statementAdvice),
            Map.entry("trails", TrailBlocks::forwards),
            Map.entry("trails-back", TrailBlocks::backwards),
            Map.entry("claim-trails", TrailBlocks::claims),
            Map.entry("trail", TrailBlocks::picture),
            Map.entry("bikes", BikeBlocks::bikes),
            Map.entry("parts", PartBlocks::byGroup),
            Map.entry("claims-that-hold", ClaimBlocks::holding),
            Map.entry("claims-not-to-use", ClaimBlocks::others));

    private Blocks() {}
}
