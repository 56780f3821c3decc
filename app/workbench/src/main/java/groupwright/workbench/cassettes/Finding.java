package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.Judged;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.Coverage;
import groupwright.drivetrain.search.Spread;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What a search brought.
 *
 * @param set the cassettes that no other beats
 * @param outOf how many the set has
 * @param shown those of them that are shown, in the order of the set
 * @param today the cassette of the concept, as it was judged with them
 * @param judgedOn the project they were judged in
 * @param took how long the search took, in s
 */
record Finding(
        Inquiry inquiry,
        BestSet set,
        long outOf,
        List<Candidate> shown,
        Candidate today,
        Definition judgedOn,
        double took) {
    Finding {
        shown = List.copyOf(shown);
    }

    /** What was found, before anything of it is judged. */
    static Finding unjudged(Inquiry inquiry, BestSet set, Definition definition, double took) {
        Spread spread = Spread.of(set, Spread.USUAL);
        List<Candidate> shown = spread.shown().stream()
                .map(found -> Candidate.of(found, inquiry.rings(), Optional.empty()))
                .toList();
        Cassette now = new Cassette(definition.get(inquiry.concept(), Concept.class).orElseThrow().cogs().stream()
                .map(Cog::new)
                .toList());
        Candidate today = Candidate.of(now, inquiry.question().mass(), inquiry.rings(), Optional.empty());
        return new Finding(inquiry, set, spread.outOf(), shown, today, definition, took);
    }

    /** The same with verdicts of a project. */
    Finding judged(List<Candidate> judged, Judged now, Definition on) {
        Candidate then = Candidate.of(now.cassette(), inquiry.question().mass(), inquiry.rings(), Optional.of(now));
        return new Finding(inquiry, set, outOf, judged, then, on, took);
    }

    Coverage coverage() {
        return set.coverage();
    }

    /** Whether anything was judged. */
    boolean isJudged() {
        return today.judged().isPresent();
    }

    /** Whether each cassette shown was judged. */
    boolean isWhole() {
        return isJudged()
                && shown.stream().allMatch(candidate -> candidate.judged().isPresent());
    }

    /** Those that miss nothing some rider groups ask for. */
    List<Candidate> suiting(Collection<RecordId> riders) {
        return shown.stream().filter(candidate -> candidate.suits(riders)).toList();
    }
}
