package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.gearing.Capacity;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearRange;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.workbench.cli.TextTable.Side;
import java.util.List;

/**
 * Gears and steps of one set, for people and for machines.
 *
 * @param wheel the driven wheel
 * @param set rings and cogs
 */
record GearsReport(Wheel wheel, GearSet set) {
    private List<Step> steps() {
        return Steps.of(set.cassette());
    }

    /** Gears from the lowest up, steps from the smallest cog on; sizes of steps only where there are steps. */
    ObjectNode json() {
        ObjectNode answer = JsonText.start();
        answer.set("circumference_m", JsonText.number(wheel.circumferenceM()));
        answer.set("gears", JsonText.list(set.gears(), this::gear));
        answer.set("range_pct", JsonText.number(GearRange.pct(set)));
        answer.set("steps_pct", JsonText.list(steps(), step -> JsonText.number(step.pct())));
        Steps.largest(steps()).ifPresent(step -> answer.set("largestStep_pct", JsonText.number(step.pct())));
        Steps.unevennessPct(steps()).ifPresent(share -> answer.set("unevenness_pct", JsonText.number(share)));
        answer.set(
                "likePositions",
                JsonText.list(steps(), step -> JsonText.NODES.numberNode(ShiftPositions.likePositions(step))));
        answer.set(
                "mismatch_mm", JsonText.list(steps(), step -> JsonText.number(ShiftPositions.phaseMismatchMm(step))));
        return answer.put("totalCapacity_teeth", Capacity.totalTeeth(set));
    }

    private ObjectNode gear(Gear gear) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("ring", gear.ring().teeth())
                .put("cog", gear.cog().teeth());
        node.set("ratio", JsonText.number(gear.ratio()));
        node.set("development_m", JsonText.number(gear.developmentM(wheel)));
        return node;
    }

    /** Two tables and what sums them up. */
    String text(Reader reader) {
        return gearTable(reader) + "\n" + (steps().isEmpty() ? "" : stepTable(reader) + "\n") + summary(reader);
    }

    private TextTable gearTable(Reader reader) {
        TextTable table = new TextTable(List.of(Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.RIGHT));
        table.row("ring", "cog", "ratio", "development m");
        for (Gear gear : set.gears()) {
            table.row(
                    reader.number(gear.ring().teeth(), 0),
                    reader.number(gear.cog().teeth(), 0),
                    reader.number(gear.ratio(), 3),
                    reader.number(gear.developmentM(wheel), 2));
        }
        return table;
    }

    private TextTable stepTable(Reader reader) {
        TextTable table = new TextTable(List.of(Side.LEFT, Side.RIGHT, Side.RIGHT, Side.RIGHT));
        table.row("cogs", "step %", "like positions", "mismatch mm");
        for (Step step : steps()) {
            table.row(
                    step.smaller().teeth() + "-" + step.larger().teeth(),
                    reader.number(step.pct(), 1),
                    reader.number(ShiftPositions.likePositions(step), 0),
                    reader.number(ShiftPositions.phaseMismatchMm(step), 2));
        }
        return table;
    }

    private String summary(Reader reader) {
        StringBuilder text = new StringBuilder();
        text.append("range ").append(reader.number(GearRange.pct(set), 1)).append(" %");
        Steps.largest(steps())
                .ifPresent(step -> text.append(", largest step ")
                        .append(reader.number(step.pct(), 1))
                        .append(" %"));
        Steps.unevennessPct(steps())
                .ifPresent(share -> text.append(", unevenness ")
                        .append(reader.number(share, 2))
                        .append(" %"));
        text.append(", total capacity ")
                .append(reader.number(Capacity.totalTeeth(set), 0))
                .append(" teeth");
        text.append(", wheel ").append(reader.number(wheel.circumferenceM(), 3)).append(" m a turn\n");
        return text.toString();
    }
}
