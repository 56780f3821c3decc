package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Makes a question of what was typed, or says at each field what is wrong with it. */
final class DraftReading {
    private static final Span ANY_TEETH = new Span(5, 80);
    private static final Span TWO_OR_MORE = new Span(2, 20);

    /**
     * What came of it.
     *
     * @param inquiry nothing where something is wrong
     * @param wrong a sentence for each field that is wrong
     * @param noObjective what is said where nothing makes a cassette better; else empty
     */
    record Read(Optional<Inquiry> inquiry, Map<Entry, String> wrong, String noObjective) {}

    private final Draft draft;
    private final Words words;
    private final TypedTeeth typed;
    private final Map<Entry, String> wrong = new EnumMap<>(Entry.class);

    private DraftReading(Draft draft, Words words) {
        this.draft = draft;
        this.words = words;
        this.typed = new TypedTeeth(draft, words, wrong);
    }

    /** Reads a draft for a concept. */
    static Read of(Draft draft, RecordId concept, Words words) {
        return new DraftReading(draft, words).read(concept);
    }

    private Read read(RecordId concept) {
        Optional<Span> smallest = span(Entry.SMALLEST_FROM, Entry.SMALLEST_TO);
        Optional<Span> largest = span(Entry.LARGEST_FROM, Entry.LARGEST_TO);
        Optional<Span> count = span(Entry.COGS_FROM, Entry.COGS_TO);
        List<Integer> rings = typed.list(Entry.RINGS);
        if (rings.isEmpty() && !wrong.containsKey(Entry.RINGS)) {
            wrong.put(Entry.RINGS, words.text("wrong.ring"));
        }
        List<Placed> limits = new LimitReading(draft, typed, this::trying).all();
        String better = draft.objectives().isEmpty() ? words.text("wrong.objective") : "";
        if (smallest.isEmpty() || largest.isEmpty() || count.isEmpty()) {
            return new Read(Optional.empty(), wrong, better);
        }
        Set<Objective> objectives = better.isEmpty() ? draft.objectives() : Set.of(Objective.MASS);
        Optional<Question> question = question(smallest.get(), largest.get(), count.get(), limits, objectives);
        Optional<Inquiry> inquiry = wrong.isEmpty() && better.isEmpty()
                ? question.map(asked -> new Inquiry(concept, asked, rings))
                : Optional.empty();
        return new Read(inquiry, wrong, better);
    }

    /** A limit and the field it was typed in. */
    record Placed(Entry entry, Limit limit) {}

    private Optional<Span> span(Entry from, Entry to) {
        Optional<Integer> least = typed.whole(from);
        Optional<Integer> most = draft.text(to).isEmpty() ? least : typed.whole(to);
        return least.isPresent() && most.isPresent()
                ? trying(to, () -> new Span(least.get(), most.get()))
                : Optional.empty();
    }

    /** Grows the question field by field: the first one that it does not bear is the one that is wrong. */
    private Optional<Question> question(
            Span smallest, Span largest, Span count, List<Placed> limits, Set<Objective> objectives) {
        boolean alone = trying(Entry.SMALLEST_TO, () -> question(smallest, ANY_TEETH, TWO_OR_MORE, objectives))
                        .isPresent()
                & trying(Entry.LARGEST_TO, () -> question(ANY_TEETH, largest, TWO_OR_MORE, objectives))
                        .isPresent();
        if (!alone
                || trying(Entry.LARGEST_TO, () -> question(smallest, largest, TWO_OR_MORE, objectives))
                        .isEmpty()) {
            return Optional.empty();
        }
        Optional<Question> question = trying(Entry.COGS_TO, () -> question(smallest, largest, count, objectives));
        List<Limit> kept = new ArrayList<>();
        for (Placed placed : limits) {
            kept.add(placed.limit());
            Limits so = new Limits(kept);
            Optional<Question> before = question;
            question = before.flatMap(asked -> trying(placed.entry(), () -> asked.with(so)));
        }
        return question;
    }

    private static Question question(Span smallest, Span largest, Span count, Set<Objective> objectives) {
        return new Question(smallest, largest, count, Limits.NONE, objectives, SprocketMass.ASSUMED);
    }

    /** What the engine refuses is said at a field, as a sentence. */
    private <T> Optional<T> trying(Entry entry, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (IllegalArgumentException refused) { // its message is a sentence for users
            String sentence = refused.getMessage();
            wrong.putIfAbsent(entry, Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".");
            return Optional.empty();
        }
    }
}
