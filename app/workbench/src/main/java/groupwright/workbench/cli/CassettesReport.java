package groupwright.workbench.cli;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.Columns;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Spread;
import groupwright.drivetrain.search.Standing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a search for cassettes found, before it is told to people or machines.
 *
 * @param best the cassettes that no other beats
 * @param spread those of them that are shown
 * @param use how they are used, for the columns that depend on it
 * @param judgement how those shown stand against a project
 * @param why where a typed-in cassette stands
 * @param neighbours what each tooth of a typed-in cassette costs
 */
record CassettesReport(
        BestSet best,
        Spread spread,
        Optional<Columns.Use> use,
        Optional<Judgement> judgement,
        Optional<Standing> why,
        Optional<Around> neighbours) {

    /** A typed-in cassette and those one tooth away. */
    record Around(Cassette cassette, List<Neighbour> neighbours) {
        Around {
            neighbours = List.copyOf(neighbours);
        }
    }

    /** The same with a judgement. */
    CassettesReport with(Judgement judged) {
        return new CassettesReport(best, spread, use, Optional.of(judged), why, neighbours);
    }

    Question question() {
        return best.question();
    }

    /** Whether ends or count may vary, so that the range tells cassettes apart. */
    boolean isOverRanges() {
        return Stream.of(question().smallest(), question().largest(), question().count())
                .anyMatch(CassettesReport::isRange);
    }

    static boolean isRange(Span span) {
        return span.least() < span.most();
    }

    /** For example {@code 10 12 14}. */
    static String cogs(Cassette cassette) {
        return cassette.cogs().stream().map(Cog::teeth).map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** For example {@code largest step}. */
    static String name(Objective objective) {
        return objective.id().replace('-', ' ');
    }

    /** Decimals in which a value is told. */
    static int decimals(Objective objective) {
        return switch (objective) {
            case LARGEST_STEP, GEAR_RANGE -> 1;
            case UNEVENNESS, MISMATCH -> 2;
            case MASS -> 0;
        };
    }
}
