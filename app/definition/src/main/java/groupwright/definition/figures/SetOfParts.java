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
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The parts that make up one set of the concept a figure is asked about: those that name the concept and those that name
 * none. A part that holds others counts through them only.
 */
final class SetOfParts {
    /** The figure that tells how often a part stands in a set. */
    static final String PIECES = "pieces";

    private SetOfParts() {}

    /** A part and how often it stands in the set, at least once. */
    record Counted(RecordId part, int pieces) {}

    /** The parts by id; missing where there is none, or their assemblies go round in a circle. O(parts). */
    static List<Counted> of(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        in.get(concept, Concept.RETIRED); // a concept that is not there has no parts either
        TreeSet<RecordId> candidates = new TreeSet<>(in.referring(Part.CONCEPTS, concept));
        candidates.addAll(in.referringToNone(Part.CONCEPTS));
        Gathering all = new Gathering(in);
        List<Counted> counted = new ArrayList<>();
        for (RecordId part : candidates) {
            int pieces = all.read(() -> (int) in.value(PIECES, Subject.of(concept, part)))
                    .orElse(0);
            if (pieces > 0 && !isAssembly(in, part)) {
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

    private static boolean isAssembly(Inputs in, RecordId part) {
        return in.referring(Part.PARENT, part).stream()
                .anyMatch(child -> in.get(child, Part.RETIRED).isEmpty());
    }
}
