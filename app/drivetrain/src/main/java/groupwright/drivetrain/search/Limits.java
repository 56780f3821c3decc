package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What cassettes have to keep, in the order in which {@link Coverage} counts what each limit removes.
 *
 * @param all the limits
 */
public record Limits(List<Limit> all) {
    /** Every cassette is allowed. */
    public static final Limits NONE = new Limits(List.of());

    /** Copies the list. */
    public Limits {
        all = List.copyOf(all);
    }

    /** These limits in this order. */
    public static Limits of(Limit... limits) {
        return new Limits(List.of(limits));
    }

    /** These limits and one more at the end. */
    public Limits and(Limit limit) {
        return new Limits(Stream.concat(all.stream(), Stream.of(limit)).toList());
    }

    /** The first limit that a cassette breaks; empty if it keeps all. */
    public Optional<Limit> firstBrokenBy(Cassette cassette) {
        return all.stream().filter(limit -> !limit.admits(cassette)).findFirst();
    }

    <L extends Limit> Stream<L> ofKind(Class<L> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast);
    }
}
