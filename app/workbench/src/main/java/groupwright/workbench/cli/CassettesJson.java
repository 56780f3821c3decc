package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.cassettes.Judged;
import groupwright.definition.cassettes.Relaxation;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Columns;
import groupwright.drivetrain.search.Coverage;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Measures;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Standing;
import java.util.List;
import java.util.Map;

/** What a search for cassettes found, for machines. */
final class CassettesJson {
    private CassettesJson() {}

    static ObjectNode of(CassettesReport report) {
        ObjectNode answer = JsonText.start();
        answer.set("objectives", JsonText.list(report.question().ordered(), one -> JsonText.NODES.textNode(one.id())));
        Coverage coverage = report.best().coverage();
        answer.put("within", coverage.candidates());
        answer.set("removed", JsonText.list(coverage.removed(), CassettesJson::removed));
        answer.put("covered", coverage.admitted());
        answer.put("outOf", report.spread().outOf());
        answer.set("cassettes", cassettes(report));
        report.why().ifPresent(standing -> answer.set("standing", standing(standing)));
        report.neighbours().ifPresent(around -> answer.set("neighbours", around(around)));
        report.judgement().ifPresent(judgement -> answer.set("project", project(judgement)));
        answer.set(
                "problems",
                JsonText.problems(report.judgement().map(Judgement::problems).orElse(List.of())));
        return answer;
    }

    private static ObjectNode removed(Coverage.Removed removed) {
        ObjectNode node = JsonText.NODES.objectNode();
        addLimit(node, removed.limit());
        return node.put("cassettes", removed.cassettes());
    }

    private static void addLimit(ObjectNode node, Limit limit) {
        node.put("limit", limit.id()).put("demand", limit.demand());
    }

    private static ArrayNode cassettes(CassettesReport report) {
        ArrayNode all = JsonText.NODES.arrayNode();
        List<Found> shown = report.spread().shown();
        for (int i = 0; i < shown.size(); i++) {
            ObjectNode node = found(shown.get(i));
            Cassette cassette = shown.get(i).cassette();
            report.use().ifPresent(use -> addColumns(node, Columns.of(cassette, use)));
            int at = i;
            report.judgement()
                    .ifPresent(judgement ->
                            addJudged(node, judgement, judgement.shown().get(at)));
            all.add(node);
        }
        return all;
    }

    private static ObjectNode found(Found found) {
        ObjectNode node = cogs(found.cassette());
        addMeasures(node, found.values());
        return node;
    }

    private static ObjectNode cogs(Cassette cassette) {
        ObjectNode node = JsonText.NODES.objectNode();
        node.set("cogs", JsonText.list(cassette.cogs(), cog -> JsonText.NODES.numberNode(cog.teeth())));
        return node;
    }

    private static void addMeasures(ObjectNode node, Measures values) {
        for (Objective objective : Objective.values()) {
            node.set(key(objective), JsonText.number(values.in(objective)));
        }
    }

    private static String key(Objective objective) {
        return switch (objective) {
            case LARGEST_STEP -> "largestStep_pct";
            case UNEVENNESS -> "unevenness_pct";
            case MISMATCH -> "mismatch_mm";
            case MASS -> "mass_g";
            case GEAR_RANGE -> "gearRange_pct";
        };
    }

    private static ObjectNode byObjective(Map<Objective, Double> values) {
        ObjectNode node = JsonText.NODES.objectNode();
        values.forEach((objective, value) -> node.set(key(objective), JsonText.number(value)));
        return node;
    }

    private static void addColumns(ObjectNode node, Columns columns) {
        node.set("longestWait_s", JsonText.number(columns.longestWaitS()));
        node.set("sideTravel_mm", JsonText.number(columns.sideTravelMm()));
    }

    private static void addJudged(ObjectNode node, Judgement judgement, Judged judged) {
        ArrayNode verdicts = node.putArray("verdicts");
        judgement
                .riders()
                .forEach(group -> judged.forRiders(group.id())
                        .ifPresent(verdict -> verdicts.addObject()
                                .put("riders", group.id().text())
                                .put("verdict", verdict.words())));
        node.set(
                "misses",
                JsonText.list(
                        judged.missed(),
                        held -> JsonText.NODES.textNode(held.criterion().name())));
    }

    private static ObjectNode standing(Standing standing) {
        if (standing instanceof Standing.Best best) {
            return found(best.cassette()).put("standing", "best");
        } else if (standing instanceof Standing.Beaten beaten) {
            ObjectNode node = found(beaten.cassette()).put("standing", "beaten");
            node.set("by", found(beaten.by()));
            node.set("lead", byObjective(beaten.lead()));
            return node;
        } else if (standing instanceof Standing.Breaks breaks) {
            ObjectNode node = cogs(breaks.cassette()).put("standing", "breaks");
            addLimit(node, breaks.limit());
            return node;
        }
        return cogs(((Standing.Outside) standing).cassette()).put("standing", "outside");
    }

    private static ObjectNode around(CassettesReport.Around around) {
        ObjectNode node = cogs(around.cassette());
        node.set("changes", JsonText.list(around.neighbours(), CassettesJson::neighbour));
        return node;
    }

    private static ObjectNode neighbour(Neighbour neighbour) {
        ObjectNode node =
                JsonText.NODES.objectNode().put("from", neighbour.from()).put("to", neighbour.to());
        node.setAll(found(neighbour.found()));
        node.set("change", byObjective(neighbour.change()));
        neighbour.broken().ifPresent(limit -> addLimit(node, limit));
        return node;
    }

    private static ObjectNode project(Judgement judgement) {
        ObjectNode node =
                JsonText.NODES.objectNode().put("concept", judgement.concept().text());
        node.set("rings", JsonText.list(judgement.rings(), JsonText.NODES::numberNode));
        node.set("judgedBy", JsonText.list(judgement.judgedBy(), one -> JsonText.NODES.textNode(one.name())));
        ObjectNode today = cogs(judgement.today().cassette());
        addJudged(today, judgement, judgement.today());
        node.set("today", today);
        node.put("missNothing", judgement.missNothing());
        if (judgement.relaxing() instanceof Judgement.Tried tried) {
            node.set("relaxation", outcome(tried.outcome()));
        } else if (judgement.relaxing() instanceof Judgement.TooMany) {
            node.put("tooManyToTry", true);
        }
        return node;
    }

    private static ObjectNode outcome(Relaxation.Outcome outcome) {
        ObjectNode node =
                JsonText.NODES.objectNode().put("tried", outcome.tried()).put("missNothing", outcome.free());
        outcome.example()
                .ifPresent(cassette -> node.set("example", cogs(cassette).get("cogs")));
        outcome.smallest().ifPresent(smallest -> node.set("smallest", relaxation(smallest)));
        node.set("alone", JsonText.list(outcome.alone(), CassettesJson::relaxation));
        node.set("outOfReach", JsonText.list(outcome.outOfReach(), CassettesJson::part));
        return node;
    }

    private static ObjectNode relaxation(Relaxation relaxation) {
        ObjectNode node = cogs(relaxation.cassette());
        node.set("relaxed", JsonText.list(relaxation.parts(), CassettesJson::part));
        return node;
    }

    private static ObjectNode part(Relaxation.Part part) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("criterion", part.criterion().name())
                .put("figure", part.criterion().criterion().figure());
        node.set("target", JsonText.number(part.target()));
        node.set("by", JsonText.number(part.by()));
        if (Double.isFinite(part.byPct())) {
            node.set("by_pct", JsonText.number(part.byPct()));
        }
        return node.put("unit", part.criterion().criterion().unit());
    }
}
