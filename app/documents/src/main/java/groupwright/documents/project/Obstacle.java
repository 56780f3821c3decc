package groupwright.documents.project;

import groupwright.documents.template.Problem;
import java.util.Objects;
import java.util.Optional;

/**
 * Why there is no document.
 *
 * @param sentence where, what and what to do
 * @param place in the template; empty where it is not about its text, for example a missing date
 */
public record Obstacle(String sentence, Optional<Place> place) {
    public Obstacle {
        Objects.requireNonNull(place, "place");
        if (sentence.isBlank()) {
            throw new IllegalArgumentException("an obstacle needs a sentence");
        }
    }

    /** A place in the template: line and column, both from 1. */
    public record Place(int line, int column) {}

    static Obstacle of(String sentence) {
        return new Obstacle(sentence, Optional.empty());
    }

    static Obstacle of(Problem problem) {
        return new Obstacle(problem.sentence(), Optional.of(new Place(problem.line(), problem.column())));
    }
}
