package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Address;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The parts that make up one set of a concept: those that name the concept, or none, and stand in no assembly that names
 * others only. A part that holds others counts through them; what is retired counts for nothing, with all it holds.
 */
final class SetOfParts {
    private final Inputs in;
    private final RecordId concept;
    private final Map<RecordId, Boolean> belongs = new HashMap<>();

    private SetOfParts(Inputs in) {
        this.in = in;
        this.concept = in.subject(Scope.CONCEPT);
    }

    /** A part and how often it stands in the set, at least once. */
    record Counted(RecordId part, int pieces) {}

    /**
     * The parts of the concept a figure is asked about, by id; missing where there is none, or assemblies go round in a
     * circle. The figure must name {@link PartFigures#PIECES} among what it uses. O(parts).
     */
    static List<Counted> of(Inputs in) {
        return new SetOfParts(in).counted();
    }

    private List<Counted> counted() {
        in.get(concept, Concept.RETIRED); // a concept that is not there has no parts either
        TreeSet<RecordId> candidates = new TreeSet<>(in.referring(Part.CONCEPTS, concept));
        candidates.addAll(in.referringToNone(Part.CONCEPTS));
        Gathering all = new Gathering(in);
        List<Counted> counted = new ArrayList<>();
        for (RecordId part : candidates) {
            int pieces = all.read(() -> (int) in.value(PartFigures.PIECES, Subject.of(part)))
                    .orElse(0); // missing where its assemblies go round in a circle or end in nothing
            if (pieces > 0 && belongs(part) && !isAssembly(part)) {
                counted.add(new Counted(part, pieces));
            }
        }
        all.end();
        if (counted.isEmpty()) {
            throw in.missing(Missing.of(
                    new MissingInput(Address.of(concept), "no part belongs to it; add a part that names it or none")));
        }
        return counted;
    }

    /** Whether the part and all assemblies it stands in are used in the concept. */
    private boolean belongs(RecordId part) {
        Deque<RecordId> way = new ArrayDeque<>();
        Optional<RecordId> at = Optional.of(part);
        while (at.isPresent() && !belongs.containsKey(at.get())) {
            way.push(at.get());
            at = in.get(at.get(), Part.PARENT);
        }
        boolean used = at.map(belongs::get).orElse(true);
        for (RecordId passed : way) { // from the outermost inwards
            used = used && isUsed(passed);
            belongs.put(passed, used);
        }
        return used;
    }

    private boolean isUsed(RecordId part) {
        List<RecordId> concepts = in.get(part, Part.CONCEPTS);
        return isCurrent(part) && (concepts.isEmpty() || concepts.contains(concept));
    }

    private boolean isCurrent(RecordId part) {
        return in.get(part, Part.RETIRED).isEmpty();
    }

    private boolean isAssembly(RecordId part) {
        return in.referring(Part.PARENT, part).stream().anyMatch(this::isCurrent);
    }
}
