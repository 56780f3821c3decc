package groupwright.workbench.cli;

import groupwright.definition.cassettes.CassetteJudge;
import groupwright.definition.cassettes.Judged;
import groupwright.definition.cassettes.OnCogs;
import groupwright.definition.cassettes.Relaxation;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.search.EveryCassette;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Question;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the cassettes shown stand against the requirements of a project.
 *
 * @param concept the concept whose cogs they replace
 * @param rings the rings they are judged with
 * @param judgedBy the criteria that were looked at
 * @param riders the rider groups
 * @param today the concept with the cogs it has
 * @param shown the cassettes shown, in their order
 * @param relaxing what would have to give way, where none of those shown misses nothing
 * @param problems what could not be read of the project
 */
record Judgement(
        RecordId concept,
        List<Integer> rings,
        List<OnCogs> judgedBy,
        List<RiderGroup> riders,
        Judged today,
        List<Judged> shown,
        Relaxing relaxing,
        List<Problem> problems) {
    /** So many are tried one by one at most; some milliseconds each. */
    static final int MOST_TRIED = 20_000;

    Judgement {
        rings = List.copyOf(rings);
        judgedBy = List.copyOf(judgedBy);
        riders = List.copyOf(riders);
        shown = List.copyOf(shown);
        problems = List.copyOf(problems);
    }

    /** Whether and how it was found out what would have to give way. */
    sealed interface Relaxing {}

    /** Some of those shown miss nothing, or there is none to try. */
    record NotNeeded() implements Relaxing {}

    /** More cassettes than can be tried one by one. */
    record TooMany(BigInteger admitted) implements Relaxing {}

    /** Every admitted cassette was tried. */
    record Tried(Relaxation.Outcome outcome) implements Relaxing {}

    /** What cassettes are judged for. */
    record Request(Optional<String> concept, Optional<Integer> ring) {}

    /**
     * Judges.
     *
     * @throws Refusal if there is no such concept, or it has no cogs to be replaced
     */
    static Judgement of(OpenProject project, Request request, CassettesReport report, Watch watch) {
        Concept concept = concept(project, request.concept());
        Optional<List<Integer>> rings = request.ring().map(List::of);
        CassetteJudge judge = CassetteJudge.of(
                project.view(), concept.id(), rings, report.question().mass());
        List<Judged> shown = judged(judge, report.spread().shown(), watch.doing("judging the cassettes shown"));
        return new Judgement(
                concept.id(),
                rings.orElse(concept.rings()),
                judge.judgedBy(),
                judge.riders(),
                judge.today(),
                shown,
                relaxing(judge, shown, report, watch.doing("trying every admitted cassette")),
                project.problems());
    }

    private static Concept concept(OpenProject project, Optional<String> name) {
        RecordId id = name.map(text -> RecordChoice.of(project.definition(), RecordKinds.CONCEPT, List.of(text))
                        .get(0))
                .orElseGet(project::lead);
        Concept concept = project.definition()
                .get(id, Concept.class)
                .orElseThrow(() -> RecordChoice.unknown(project.definition(), id.text(), id.letters()));
        if (concept.cogs().isEmpty() || concept.rings().isEmpty()) {
            throw Refusal.of(
                    concept.id() + " has no rings or no cogs yet, so that there is nothing to replace",
                    "give it rings and cogs, or name another with --concept");
        }
        return concept;
    }

    private static List<Judged> judged(CassetteJudge judge, List<Found> shown, Watch watch) {
        List<Judged> judged = new ArrayList<>();
        for (Found found : shown) {
            watch.orStop();
            judged.add(judge.judge(found.cassette()));
            watch.report(judged.size(), shown.size());
        }
        return judged;
    }

    private static Relaxing relaxing(CassetteJudge judge, List<Judged> shown, CassettesReport report, Watch watch) {
        Question question = report.question();
        BigInteger admitted = report.best().coverage().admitted();
        if (shown.isEmpty() || shown.stream().anyMatch(Judged::missesNothing)) {
            return new NotNeeded();
        } else if (admitted.compareTo(BigInteger.valueOf(MOST_TRIED)) > 0) {
            return new TooMany(admitted);
        }
        return new Tried(Relaxation.search(judge, EveryCassette.of(question), admitted.longValueExact(), watch));
    }

    long missNothing() {
        return shown.stream().filter(Judged::missesNothing).count();
    }
}
