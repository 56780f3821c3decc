package groupwright.workbench.concepts;

import groupwright.definition.record.Component;
import groupwright.definition.record.Concept;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A row of tooth counts: how it is typed, and how it changes by a single tooth. Limits are those of the record. */
enum ToothRow {
    /** Smallest first. */
    COGS("cogs", 1),
    /** Largest first. */
    RINGS("rings", -1);

    private static final String SEPARATORS = "[\\s,;/\\-\\u2010-\\u2015\\u2212]+";

    private final String field;
    private final int direction;

    ToothRow(String field, int direction) {
        this.field = field;
        this.direction = direction;
    }

    /** Name of the field of a concept. */
    String field() {
        return field;
    }

    List<Integer> of(Concept concept) {
        return this == COGS ? concept.cogs() : concept.rings();
    }

    /** A row after an edit, or why it cannot be. */
    sealed interface Outcome {}

    /**
     * The row as it would be.
     *
     * @param focus place, from 0, of the wheel that was changed
     */
    record Changed(List<Integer> teeth, int focus) implements Outcome {
        Changed {
            teeth = List.copyOf(teeth);
        }
    }

    /**
     * Why not.
     *
     * @param key of the sentence, without the row's own part
     * @param parts filled into the sentence
     */
    record Refused(String key, List<String> parts) implements Outcome {
        Refused {
            parts = List.copyOf(parts);
        }

        static Refused of(String key, Object... parts) {
            return new Refused(
                    key, List.of(parts).stream().map(Object::toString).toList());
        }
    }

    /** For example {@code 10-12-14}; rings are parted by a stroke. */
    String text(List<Integer> teeth) {
        return teeth.stream().map(Object::toString).collect(Collectors.joining(this == COGS ? "-" : "/"));
    }

    /** Reads typed counts; hyphens, dashes, commas, strokes and blanks part them alike. */
    Outcome read(String typed) {
        List<Integer> teeth = new ArrayList<>();
        for (String word : typed.strip().split(SEPARATORS)) {
            if (word.isEmpty()) {
                continue; // a separator stood in front
            }
            if (!word.matches("[0-9]{1,6}")) {
                return Refused.of("notNumber", word);
            }
            Optional<Refused> refused = next(teeth, Integer.parseInt(word));
            if (refused.isPresent()) {
                return refused.get();
            }
            teeth.add(Integer.parseInt(word));
        }
        return teeth.size() < shortest() ? Refused.of("none") : new Changed(teeth, teeth.size() - 1);
    }

    private Optional<Refused> next(List<Integer> before, int teeth) {
        if (teeth < least() || teeth > most()) {
            return Optional.of(Refused.of(teeth < least() ? "few" : "many", teeth, least(), most()));
        }
        if (before.contains(teeth)) {
            return Optional.of(Refused.of("twice", teeth));
        }
        if (!before.isEmpty() && !follows(before.get(before.size() - 1), teeth)) {
            return Optional.of(Refused.of("order", teeth, before.get(before.size() - 1)));
        }
        return before.size() == longest() ? Optional.of(Refused.of("long", longest())) : Optional.empty();
    }

    private boolean follows(int before, int teeth) {
        return direction * (teeth - before) > 0;
    }

    /** What is wrong with counts while somebody still types: the last number is not judged while more digits may mend it. */
    Optional<Refused> wrongSoFar(String typed) {
        String done = typed.stripLeading();
        if (done.matches("(?s).*[0-9]$")) {
            String last = done.replaceFirst("(?s)^.*?([0-9]+)$", "$1");
            String before = done.substring(0, done.length() - last.length());
            if (last.length() <= 2 && read(typed) instanceof Refused && mayGrow(before, last)) {
                done = before;
            }
        }
        if (done.isBlank() || done.matches(SEPARATORS)) {
            return Optional.empty();
        }
        return read(done) instanceof Refused refused ? Optional.of(refused) : Optional.empty();
    }

    /** Whether some digits behind the last number would make the whole row good. */
    private boolean mayGrow(String before, String last) {
        int begun = Integer.parseInt(last);
        for (int scale = 10; begun * scale <= most(); scale *= 10) {
            for (int more = 0; more < scale; more++) {
                if (read(before + (begun * scale + more)) instanceof Changed) {
                    return true;
                }
            }
            if (begun == 0) {
                return false;
            }
        }
        return false;
    }

    /** One wheel with more or fewer teeth. */
    Outcome nudge(List<Integer> teeth, int place, int by) {
        int next = teeth.get(place) + by;
        if (next < least() || next > most()) {
            return Refused.of(next < least() ? "few" : "many", next, least(), most());
        }
        if (teeth.contains(next)) {
            return Refused.of("taken", next);
        }
        List<Integer> changed = new ArrayList<>(teeth);
        changed.set(place, next);
        return new Changed(changed, place);
    }

    /**
     * One wheel more: between this and the next, at the middle of their ratios; behind the last one, a step as large as the
     * one before it.
     */
    Outcome insert(List<Integer> teeth, int place) {
        if (teeth.size() == longest()) {
            return Refused.of("long", longest());
        }
        int here = teeth.get(place);
        boolean last = place == teeth.size() - 1;
        int added;
        if (last) {
            double ratio = place == 0 ? Math.pow(1.2, direction) : (double) here / teeth.get(place - 1);
            int wanted = (int) Math.round(here * ratio);
            int within = Math.max(least(), Math.min(most(), wanted));
            added = follows(here, within) ? within : here + direction;
            if (added < least() || added > most()) {
                return Refused.of(added < least() ? "few" : "many", added, least(), most());
            }
        } else {
            int next = teeth.get(place + 1);
            if (Math.abs(next - here) < 2) {
                return Refused.of("noRoom", here, next);
            }
            int low = Math.min(here, next) + 1;
            int high = Math.max(here, next) - 1;
            added = (int) Math.max(low, Math.min(high, Math.round(Math.sqrt((double) here * next))));
        }
        List<Integer> changed = new ArrayList<>(teeth);
        changed.add(place + 1, added);
        return new Changed(changed, place + 1);
    }

    /** One wheel less. */
    Outcome remove(List<Integer> teeth, int place) {
        if (teeth.size() <= shortest()) {
            return Refused.of("last");
        }
        List<Integer> changed = new ArrayList<>(teeth);
        changed.remove(place);
        return new Changed(changed, Math.min(place, changed.size() - 1));
    }

    private Component component() {
        Shape<Concept> shape = Shape.of(Concept.class);
        return shape.components().get(shape.indexOf(field));
    }

    int least() {
        return (int) component().least();
    }

    int most() {
        return (int) component().most();
    }

    private int shortest() {
        return ((FieldType.ListOf) component().type()).least();
    }

    int longest() {
        return ((FieldType.ListOf) component().type()).most();
    }
}
