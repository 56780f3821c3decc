package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * All cassettes that keep the limits of a question, one by one, beaten or not; by smallest cog, then by the cogs from the
 * smallest up.
 *
 * <p>Cost: no partial cassette is built that leads nowhere, so O(cogs · teeth) for each cassette. Nothing is kept but the
 * one in hand. {@link Coverage#admitted} says how many there are.
 */
public final class EveryCassette implements Iterator<Cassette> {
    private final Deque<Target> targets;
    private Optional<Walk> walk = Optional.empty();
    private Optional<Cassette> next = Optional.empty();

    private EveryCassette(Question question) {
        targets = new ArrayDeque<>(Target.of(question, Admission.of(question)));
        advance();
    }

    /** The cassettes of a question. */
    public static Iterator<Cassette> of(Question question) {
        return new EveryCassette(question);
    }

    @Override
    public boolean hasNext() {
        return next.isPresent();
    }

    @Override
    public Cassette next() {
        Cassette taken = next.orElseThrow(NoSuchElementException::new);
        advance();
        return taken;
    }

    private void advance() {
        next = Optional.empty();
        while (next.isEmpty() && (walk.isPresent() || !targets.isEmpty())) {
            if (walk.isEmpty()) {
                walk = Optional.of(new Walk(targets.removeFirst()));
            }
            next = walk.get().next();
            if (next.isEmpty()) {
                walk = Optional.empty();
            }
        }
    }

    /** Depth first through the cassettes of one target. */
    private static final class Walk {
        private final Target target;
        private final Reachable reachable;
        private final int[] teeth;
        private int depth; // cogs chosen; the last of them is tried further next
        private boolean told; // whether the cassette in hand was given out

        Walk(Target target) {
            this.target = target;
            reachable = new Reachable(target);
            teeth = new int[target.count().most() + 1];
            teeth[0] = target.smallest();
            depth = reachable.at(1, target.smallest()) ? 1 : 0;
        }

        Optional<Cassette> next() {
            while (depth > 0) {
                if (!told && depth > 1 && target.endsAt(depth, teeth[depth - 1])) {
                    told = true;
                    return Optional.of(cassette());
                }
                told = false;
                if (!deeper()) {
                    onward();
                }
            }
            return Optional.empty();
        }

        private boolean deeper() {
            return depth < target.count().most() && place(depth, teeth[depth - 1] + 1);
        }

        /** Takes the next larger last cog, going back where there is none. */
        private void onward() {
            do {
                depth--;
            } while (depth > 0 && !place(depth, teeth[depth] + 1));
        }

        /** Puts the first cog that may stand at a place from these teeth on; false where none may. */
        private boolean place(int at, int from) {
            int before = teeth[at - 1];
            for (int cog = from; cog <= target.largest().most(); cog++) {
                if (target.admission().step(at, before, cog)
                        && (at < 2 || target.admission().pair(teeth[at - 2], before, cog))
                        && reachable.at(at + 1, before, cog)) {
                    teeth[at] = cog;
                    depth = at + 1;
                    return true;
                }
            }
            return false;
        }

        private Cassette cassette() {
            List<Cog> cogs = Arrays.stream(teeth, 0, depth).mapToObj(Cog::new).toList();
            return new Cassette(cogs);
        }
    }
}
