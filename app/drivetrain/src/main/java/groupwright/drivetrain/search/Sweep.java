package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.List;

/**
 * One run of the dynamic programme over (position, teeth), or (position, teeth, teeth before) where a limit looks back.
 *
 * <p>Partial cassettes are only compared within one such state, where all have the same ways to go on.
 */
final class Sweep {
    /** A complete cassette takes up about so many times the memory of a partial one. */
    private static final int COMPLETE = 3;

    private final Target target;
    private final int most;
    private final Scale scale;
    private final Labels labels = new Labels();
    private final Candidates candidates;
    private final List<End> ends = new ArrayList<>();

    /**
     * The labels of one state.
     *
     * @param before the cog before; 0 if nothing looks back
     * @param from the first label
     * @param to the label after the last
     */
    private record State(int before, int from, int to) {}

    /** Complete cassettes: a label, with ends and count. */
    record End(Labels labels, int label, Ends ends) {}

    /** At most so many partial cassettes may be kept. */
    Sweep(Target target, Scale scale, int most) {
        this.target = target;
        this.most = most;
        this.scale = scale;
        candidates = new Candidates(scale.objectives());
    }

    /** Runs and gives the complete cassettes that may be best. */
    List<End> run(Ticker ticker) {
        int low = scale.low;
        Reachable reachable = new Reachable(target);
        List<List<State>> layer = layer();
        if (reachable.at(1, target.smallest())) {
            labels.root(target.smallest(), scale.mg[target.smallest() - low]);
            layer.get(target.smallest() - low).add(new State(0, 0, 1));
        }
        for (int position = 2; position <= target.count().most(); position++) {
            ticker.tick();
            List<List<State>> next = layer();
            for (int teeth = target.smallest() + 1; teeth <= target.largest().most(); teeth++) {
                if (reachable.at(position, teeth)) {
                    extend(layer, position, teeth, reachable, next.get(teeth - low));
                    refuseTooMany();
                    ticker.check();
                }
                end(position, teeth, next.get(teeth - low));
            }
            layer = next;
        }
        return ends;
    }

    /** What memory grows with, counted in partial cassettes. */
    int weight() {
        return labels.weight() + COMPLETE * ends.size();
    }

    private List<List<State>> layer() {
        List<List<State>> layer = new ArrayList<>();
        for (int teeth = scale.low; teeth <= target.largest().most(); teeth++) {
            layer.add(new ArrayList<>(1));
        }
        return layer;
    }

    private void extend(List<List<State>> layer, int position, int teeth, Reachable reachable, List<State> made) {
        boolean looksBack = target.admission().looksBack();
        candidates.clear();
        for (int before = target.smallest(); before < teeth; before++) {
            if (target.admission().step(position - 1, before, teeth) && reachable.at(position, before, teeth)) {
                for (State state : layer.get(before - scale.low)) {
                    if (state.before() == 0 || target.admission().pair(state.before(), before, teeth)) {
                        extend(state, before, teeth);
                    }
                }
                if (looksBack) {
                    keep(before, teeth, made);
                }
            }
        }
        if (!looksBack) {
            keep(0, teeth, made);
        }
    }

    private void extend(State state, int before, int teeth) {
        int a = before - scale.low;
        int b = teeth - scale.low;
        int rank = scale.rank[a][b];
        long ln2 = scale.ln2[a][b];
        int nm = scale.nm[a][b];
        int mg = scale.mg[b];
        for (int label = state.from(); label < state.to(); label++) {
            candidates.add(
                    Math.max(rank, labels.rank(label)),
                    ln2 + labels.ln2(label),
                    nm + labels.nm(label),
                    mg + labels.mg(label),
                    label);
        }
    }

    private void keep(int before, int teeth, List<State> made) {
        int from = labels.size();
        candidates.keepIn(labels, teeth);
        candidates.clear();
        if (labels.size() > from) {
            made.add(new State(before, from, labels.size()));
        }
    }

    private void end(int position, int teeth, List<State> states) {
        if (target.endsAt(position, teeth)) {
            var complete = new Ends(target.smallest(), teeth, position);
            for (State state : states) {
                for (int label = state.from(); label < state.to(); label++) {
                    ends.add(new End(labels, label, complete));
                }
            }
        }
    }

    private void refuseTooMany() {
        if (weight() > most) {
            throw new Contradiction(
                    "this question needs more partial cassettes to be kept than there is room for; narrow ends and count or set limits");
        }
    }
}
