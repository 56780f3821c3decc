package groupwright.documents.project;

import java.util.List;

/** All blocks by the names templates use; a new one is one entry here and one class. */
final class Blocks {
    static final List<Named> ALL = List.of(
            new Named(
                    "riders",
                    RiderBlocks::groups,
                    new BlockHelp(
                            "",
                            "A table: rider groups side by side with what their figures are computed from",
                            "```riders\nRider groups and what their figures are computed from\n```")),
            new Named(
                    "needs",
                    RiderBlocks::needs,
                    new BlockHelp("", "A table: what riders said, in their words", "```needs\nWhat riders said\n```")),
            new Named(
                    "concepts",
                    ConceptBlocks::setUps,
                    new BlockHelp(
                            "",
                            "A table: the concepts that are worked on, with rings and cogs",
                            "```concepts\nConcepts that are worked on\n```")),
            new Named(
                    "figures",
                    ConceptBlocks::figures,
                    new BlockHelp(
                            "a list of figures parted by commas, with parameters but without a concept",
                            "A table: figures as rows, concepts as columns",
                            "```figures gear-range, largest-step from-teeth=14\nGearing of the concepts side by side\n```")),
            new Named(
                    "gears",
                    GearBlocks::gears,
                    new BlockHelp(
                            "a concept, or lead",
                            "A table: the cogs of a concept with steps and like positions",
                            "```gears lead\nCogs of the lead concept\n```")),
            new Named(
                    "gear-ladder",
                    ChartBlocks::gearLadder,
                    new BlockHelp(
                            "a rider group; without one the most important",
                            "A chart: the gears of the concepts on the wheel of a rider group",
                            "```gear-ladder G-001\n```")),
            new Named(
                    "step-bars",
                    ChartBlocks::stepBars,
                    new BlockHelp(
                            "a concept, or lead; at-most=18 draws a limit in percent, from-teeth=14 the cog from which on it holds",
                            "A chart: the steps between the cogs of a concept",
                            "```step-bars lead from-teeth=14 at-most=18\n```")),
            new Named(
                    "verdicts",
                    RequirementBlocks::verdicts,
                    new BlockHelp(
                            "least-weight=8, which leaves out requirements that count less",
                            "A table: agreed requirements, measured on the lead concept",
                            "```verdicts\nAgreed requirements\n```")),
            new Named(
                    "verdicts-in-short",
                    RequirementBlocks::verdictsInShort,
                    new BlockHelp(
                            "least-weight=8, which leaves out requirements that count less",
                            "A table: agreed requirements, measured on the lead concept, without bars",
                            "```verdicts-in-short least-weight=8\nWhat counts most\n```")),
            new Named(
                    "statements",
                    RequirementBlocks::statements,
                    new BlockHelp(
                            "", "A table: agreed requirements in words", "```statements\nRequirements in words\n```")),
            new Named(
                    "open",
                    RequirementBlocks::open,
                    new BlockHelp(
                            "least-weight=8, which leaves out requirements that count less; most=4, which shows the first and counts the rest",
                            "A list: what stands in the way of each agreed requirement that does not meet for certain",
                            "```open\n```")),
            new Named(
                    "coverage",
                    RequirementBlocks::coverage,
                    new BlockHelp(
                            "",
                            "A table: how many requirements have reached each rung, in all and by rider group",
                            "```coverage\nHow far we are\n```")),
            new Named(
                    "voices",
                    VoiceBlocks::voices,
                    new BlockHelp(
                            "most=3, how many of each group",
                            "A list: the weightiest needs of each rider group in its own words",
                            "```voices most=2\n```")),
            new Named(
                    "why-chosen",
                    DecisionBlocks::whyChosen,
                    new BlockHelp(
                            "a concept, or lead",
                            "The reasons of the decisions that chose a concept",
                            "```why-chosen lead\n```")),
            new Named(
                    "decisions",
                    DecisionBlocks::decisions,
                    new BlockHelp(
                            "",
                            "A table: every decision that stands, or the open question",
                            "```decisions\nWhat was decided\n```")),
            new Named(
                    "scores",
                    DecisionBlocks::scores,
                    new BlockHelp(
                            "a decision",
                            "A table: how the options of a decision did by its criteria, with the weighed mean",
                            "```scores D-001\nOptions and criteria\n```")),
            new Named(
                    "yardsticks",
                    YardstickBlocks::yardsticks,
                    new BlockHelp(
                            "a concept, or lead",
                            "A table: figures as rows, a concept and the yardsticks as columns",
                            "```yardsticks lead\nBeside our yardsticks\n```")),
            new Named(
                    "verdict-grid",
                    CoverageBlocks::grid,
                    new BlockHelp(
                            "",
                            "A table: agreed requirements as rows, concepts as columns, the verdict in each cell",
                            "```verdict-grid\nVerdicts by concept\n```")),
            new Named(
                    "verdict-counts",
                    CoverageBlocks::counts,
                    new BlockHelp(
                            "",
                            "A table: how many agreed requirements each concept meets, misses, or cannot be judged on",
                            "```verdict-counts\nVerdicts counted\n```")),
            new Named(
                    "need-coverage",
                    CoverageBlocks::needs,
                    new BlockHelp(
                            "a rider group, whose needs and verdicts count then",
                            "A table: each need, the requirements that answer it, and how far these are for the lead concept",
                            "```need-coverage G-001\nFrom need to verdict\n```")),
            new Named(
                    "unanswered-needs",
                    CoverageBlocks::unanswered,
                    new BlockHelp("", "A list: needs that no requirement answers", "```unanswered-needs\n```")),
            new Named(
                    "gaps",
                    CoverageBlocks::gaps,
                    new BlockHelp(
                            "",
                            "A table: requirements that lack a need, a criterion, or the result of a test",
                            "```gaps\nWhat each requirement lacks\n```")),
            new Named(
                    "statement-advice",
                    CoverageBlocks::statementAdvice,
                    new BlockHelp(
                            "",
                            "A table: words that make statements hard to verify; advice only",
                            "```statement-advice\nHard to verify\n```")),
            new Named(
                    "trails",
                    TrailBlocks::forwards,
                    new BlockHelp(
                            "",
                            "A table: each criterion of an agreed requirement, from its needs to the places where its answer stands",
                            "```trails\nFrom need to page\n```")),
            new Named(
                    "trails-back",
                    TrailBlocks::backwards,
                    new BlockHelp(
                            "",
                            "A table: each field that a requirement or claim rests on, and what hangs on it",
                            "```trails-back\nFrom field to claim\n```")),
            new Named(
                    "claim-trails",
                    TrailBlocks::claims,
                    new BlockHelp(
                            "",
                            "A table: each claim, back to what riders said",
                            "```claim-trails\nClaims and what they rest on\n```")),
            new Named(
                    "trail",
                    TrailBlocks::picture,
                    new BlockHelp(
                            "a requirement; without one the agreed and answered requirement that counts most",
                            "A picture: the trail of a requirement from needs to claims",
                            "```trail R-007\n```")),
            new Named(
                    "cassette-question",
                    StudyBlocks::question,
                    new BlockHelp(
                            "a concept, or lead; smallest=10, largest=42-48, cogs=11 and largest-step=20 ask for others than its own",
                            "What cassettes are looked among, and how many they are",
                            "```cassette-question lead\n```")),
            new Named(
                    "best-cassettes",
                    StudyBlocks::best,
                    new BlockHelp(
                            "as cassette-question; most=12, how many are shown",
                            "A table: the cassettes that no other beats",
                            "```best-cassettes lead\nCassettes that no other beats\n```")),
            new Named(
                    "cassette-trade-off",
                    StudyBlocks::tradeOff,
                    new BlockHelp(
                            "as cassette-question",
                            "A chart: unevenness of the steps against weight",
                            "```cassette-trade-off lead\n```")),
            new Named(
                    "cassette-standing",
                    StudyBlocks::standing,
                    new BlockHelp(
                            "as cassette-question",
                            "Whether the cogs of a concept are among the best, and which one beats them",
                            "```cassette-standing lead\n```")),
            new Named(
                    "why-not-others",
                    StudyBlocks::others,
                    new BlockHelp(
                            "as cassette-question; most=12, how many are shown",
                            "A list: what each of the best does better and worse than the cogs of a concept",
                            "```why-not-others lead\n```")),
            new Named(
                    "cassette-neighbours",
                    StudyBlocks::neighbours,
                    new BlockHelp(
                            "as cassette-question",
                            "A table: what one tooth more or less costs",
                            "```cassette-neighbours lead\nOne tooth more or less\n```")),
            new Named(
                    "cassette-decision",
                    StudyBlocks::decision,
                    new BlockHelp(
                            "as cassette-question",
                            "A table: a decision drafted from the study, options and scores",
                            "```cassette-decision lead\nA decision, drafted\n```")),
            new Named(
                    "bikes",
                    BikeBlocks::bikes,
                    new BlockHelp("", "A table: the bikes the groupset must fit", "```bikes\nBikes on the list\n```")),
            new Named(
                    "fit-in-short",
                    FitBlocks::inShort,
                    new BlockHelp(
                            "a concept, or lead",
                            "A paragraph: the bikes a concept fits, those it does not fit and why, and those not known enough",
                            "```fit-in-short lead\n```")),
            new Named(
                    "fit-matrix",
                    FitBlocks::matrix,
                    new BlockHelp(
                            "",
                            "A table: bikes as rows, concepts as columns, the verdict of the fit and the links of the chain in each cell",
                            "```fit-matrix\nWhat fits what\n```")),
            new Named(
                    "fit-checks",
                    BikeFitBlocks::checks,
                    new BlockHelp(
                            "a bike",
                            "A table: the checks of the fit as rows with their limits, concepts as columns",
                            "```fit-checks B-001\nChecks on this bike\n```")),
            new Named(
                    "fit-missing",
                    BikeFitBlocks::missing,
                    new BlockHelp(
                            "a bike; without one all",
                            "A list: the inputs that are missing for the fit, and who can tell",
                            "```fit-missing\n```")),
            new Named(
                    "gear-paths",
                    GearPathBlocks::paths,
                    new BlockHelp(
                            "a concept, or lead, and a bike",
                            "A table: the gears of a concept on a bike with cage, guide pulley and chain",
                            "```gear-paths lead B-001\nChain and cage in each gear\n```")),
            new Named(
                    "parts",
                    PartBlocks::byGroup,
                    new BlockHelp(
                            "",
                            "A table: weight of the lead concept's parts by group",
                            "```parts\nParts of the lead concept by group\n```")),
            new Named(
                    "claims-that-hold",
                    ClaimBlocks::holding,
                    new BlockHelp(
                            "",
                            "A table: claims that are approved, still true and supported, with their wording",
                            "```claims-that-hold\nWhat may be said\n```")),
            new Named(
                    "claims-not-to-use",
                    ClaimBlocks::others,
                    new BlockHelp(
                            "",
                            "A table: the other claims and what stands in their way, without their wording",
                            "```claims-not-to-use\nOther claims\n```")));

    /**
     * A block under its name.
     *
     * @param help what the reference says about it; without it a block does not compile
     */
    record Named(String name, Block block, BlockHelp help) {}

    private Blocks() {}
}
