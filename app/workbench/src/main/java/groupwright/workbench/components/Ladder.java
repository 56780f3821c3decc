package groupwright.workbench.components;

import groupwright.definition.assessment.Rung;
import groupwright.workbench.look.Words;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * How far a requirement has climbed.
 *
 * @param steps one for each rung
 * @param name in words
 */
public record Ladder(Map<Rung, Step> steps, String name) {
    /** How a rung stands. */
    public enum Step {
        REACHED,
        /** It was tried and fails: the rung hangs by its left end. */
        FAILS,
        /** Its test or approval is older than what it speaks of: dashed. */
        STALE,
        /** Not reached, or too close to call. */
        OPEN
    }

    public Ladder {
        Objects.requireNonNull(name, "name");
        for (Rung rung : Rung.values()) {
            if (!steps.containsKey(rung)) {
                throw new IllegalArgumentException("a ladder needs all four rungs, lacks " + rung);
            }
        }
        steps = Map.copyOf(steps);
    }

    /** A ladder of which the given rung and all below it are reached. */
    public static Ladder upTo(Rung highest, Locale locale) {
        return of(highest, Step.OPEN, locale);
    }

    /**
     * A ladder of which the given rung and all below it are reached.
     *
     * @param above how the next rung stands; said of the highest rung where there is none above
     */
    public static Ladder of(Rung highest, Step above, Locale locale) {
        Map<Rung, Step> steps = new EnumMap<>(Rung.class);
        for (Rung rung : Rung.values()) {
            int higher = rung.ordinal() - highest.ordinal();
            steps.put(rung, higher <= 0 ? Step.REACHED : higher == 1 ? above : Step.OPEN);
        }
        return new Ladder(steps, nameOf(steps, locale));
    }

    /** How a rung stands. */
    public Step at(Rung rung) {
        return steps.get(rung);
    }

    /** A rung in words. */
    public static String word(Rung rung, Locale locale) {
        return Words.of(Ladder.class, locale).text("rung." + rung.name());
    }

    private static String nameOf(Map<Rung, Step> steps, Locale locale) {
        Words words = Words.of(Ladder.class, locale);
        String name = words.text("ladder.NONE");
        for (Rung rung : Rung.values()) {
            String word = words.text("rung." + rung.name());
            switch (steps.get(rung)) {
                case REACHED -> name = word;
                case FAILS -> name = words.text("ladder.MISSES", name, word);
                case STALE -> name = words.text("ladder.STALE", name, word);
                case OPEN -> {}
            }
        }
        return name;
    }
}
