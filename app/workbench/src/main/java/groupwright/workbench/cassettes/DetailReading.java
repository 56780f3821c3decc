package groupwright.workbench.cassettes;

import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.StepBars;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import java.util.ArrayList;
import java.util.List;

/** What is told of one cassette, beside that of today. */
final class DetailReading {
    private static final double SAME = 1e-9;

    private final CassetteWords say;
    private final CassettesSheet sheet;
    private final CassettesSheet.Lead lead;
    private final Shown shown;
    private final Candidate chosen;

    DetailReading(CassetteWords say, CassettesSheet sheet, CassettesSheet.Lead lead, Shown shown, Candidate chosen) {
        this.say = say;
        this.sheet = sheet;
        this.lead = lead;
        this.shown = shown;
        this.chosen = chosen;
    }

    private Candidate today() {
        return shown.finding().today();
    }

    /** The steps of today and of the cassette, to one height. */
    List<StepBars> bars() {
        List<StepBars.Step> now = steps(today().cassette());
        List<StepBars.Step> then = steps(chosen.cassette());
        double top = Math.max(StepBars.largestPct(now, sheet.limit()), StepBars.largestPct(then, sheet.limit()));
        String letter = shown.letter(chosen.cassette());
        String name =
                letter.isEmpty() ? say.words().text("selected") : say.words().text("selected.letter", letter);
        return List.of(
                bars(lead.sign(), say.words().text("today", lead.id()), now, top),
                bars(sheet.next().sign(), name, then, top));
    }

    private StepBars bars(ConceptSign sign, String name, List<StepBars.Step> steps, double top) {
        return new StepBars(sign, name, steps, sheet.limit(), top, say.locale());
    }

    private static List<StepBars.Step> steps(Cassette cassette) {
        return Steps.of(cassette).stream()
                .map(step -> new StepBars.Step(
                        step.smaller().teeth(), step.larger().teeth(), step.pct(), ShiftPositions.likePositions(step)))
                .toList();
    }

    /** Each measure today, then, and whether that is better. */
    Grid against() {
        List<List<Grid.Cell>> rows = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            double gain = measure.cost(today()) - measure.cost(chosen);
            String verdict = Math.abs(gain) < SAME ? "same" : gain > 0 ? "better" : "worse";
            Grid.Cell word = Grid.Cell.text(say.words().text("against." + verdict));
            rows.add(List.of(
                    Grid.Cell.muted(say.name(measure)),
                    Grid.Cell.number(say.amount(measure, measure.of(today()))),
                    Grid.Cell.muted("→"),
                    Grid.Cell.number(say.amount(measure, measure.of(chosen))),
                    gain > SAME ? word.strong() : word));
        }
        return new Grid(rows);
    }

    /** Like positions and longest wait of each pair of cogs. */
    Grid pairs() {
        Chainring ring = new Chainring(
                shown.finding().inquiry().rings().stream().min(Integer::compare).orElseThrow());
        List<List<Grid.Cell>> rows = new ArrayList<>();
        for (Step step : Steps.of(chosen.cassette())) {
            int like = ShiftPositions.likePositions(step);
            double wait = ShiftPositions.longestWaitS(step, ring, Candidate.CADENCE_RPM);
            Grid.Cell count = Grid.Cell.text(say.words().text(like == 1 ? "like.one" : "like.many", like));
            rows.add(List.of(
                    Grid.Cell.muted(step.smaller().teeth() + "–" + step.larger().teeth()),
                    like == 1 ? count.strong() : count,
                    Grid.Cell.number(say.amount(Measure.WAIT, wait)),
                    Grid.Cell.number(say.amount(Measure.MISMATCH, ShiftPositions.phaseMismatchMm(step)))));
        }
        return new Grid(rows);
    }

    /** What one tooth more or fewer on one cog changes. */
    Grid neighbours() {
        List<List<Grid.Cell>> rows = new ArrayList<>();
        List<Objective> objectives =
                List.of(Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS);
        List<Grid.Cell> heads =
                new ArrayList<>(List.of(Grid.Cell.muted(say.words().text("neighbour.cog"))));
        objectives.forEach(objective -> heads.add(new Grid.Cell(
                say.head(Measure.of(objective)) + ", " + objective.unit(),
                Grid.Edge.RIGHT,
                groupwright.workbench.look.Weight.REGULAR,
                groupwright.workbench.look.Token.MUTED)));
        heads.add(Grid.Cell.muted(""));
        rows.add(heads);
        for (Neighbour one :
                Neighbour.of(chosen.cassette(), shown.finding().inquiry().question())) {
            List<Grid.Cell> row = new ArrayList<>(List.of(Grid.Cell.text(one.from() + " → " + one.to())));
            objectives.forEach(objective -> {
                double change = one.change().get(objective);
                Grid.Cell cell = Grid.Cell.number(say.change(Measure.of(objective), change));
                row.add(change < -SAME ? cell.strong() : cell);
            });
            row.add(Grid.Cell.muted(one.broken()
                    .map(limit -> say.words().text("neighbour.breaks", limit.demand()))
                    .orElse("")));
            rows.add(row);
        }
        return new Grid(rows);
    }
}
