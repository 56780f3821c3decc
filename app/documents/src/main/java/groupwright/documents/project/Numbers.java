package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Trace;
import java.util.List;
import java.util.Objects;

/** The numbers of a document without its pages, or what stands in the document's way. */
public sealed interface Numbers {
    /**
     * A number of a document.
     *
     * @param ask what it answers
     * @param shown the answer with its unit, as the document shows it
     */
    record Shown(Ask ask, String shown) {}

    /**
     * The numbers.
     *
     * @param asks the question of each entry of the trace; entry {@code n} is at {@code n - 1}
     */
    record Read(Trace trace, List<Ask> asks) implements Numbers {
        public Read {
            Objects.requireNonNull(trace, "trace");
            asks = List.copyOf(asks);
        }

        /** The numbers that stand in the document's text, each once, in the order of first use. */
        public List<Shown> all() {
            return trace.entries().stream()
                    .filter(entry -> entry.places() > 0)
                    .map(this::shown)
                    .toList();
        }

        /** Those of them that read otherwise than in an earlier state, see {@link Trace#changedSince}. */
        public List<Shown> changedSince(Read earlier) {
            return trace.changedSince(earlier.trace).stream()
                    .map(trace::entry)
                    .filter(entry -> entry.places() > 0)
                    .map(this::shown)
                    .toList();
        }

        private Shown shown(NumberedEntry entry) {
            return new Shown(asks.get(entry.number() - 1), entry.entry().shown().text());
        }
    }

    /**
     * There is no document.
     *
     * @param obstacles at least one
     */
    record Refused(List<Obstacle> obstacles) implements Numbers {
        public Refused {
            obstacles = List.copyOf(obstacles);
        }
    }
}
