package groupwright.workbench.notation;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which figures a criterion can hold, and what choosing one says about the fields beside it. */
public final class Criteria {
    private static final Set<Scope> MEASURED = EnumSet.of(Scope.CONCEPT, Scope.REQUIREMENT, Scope.RIDERS, Scope.BIKE);

    private Criteria() {}

    /** The figures that measure the product, in the order of their names. */
    public static List<Figure> figures(Catalogue catalogue) {
        return catalogue.all().stream()
                .filter(figure -> figure.level() == Level.CALCULUS && MEASURED.containsAll(figure.scopes()))
                .sorted(java.util.Comparator.comparing(Figure::name))
                .toList();
    }

    /** Those of {@link #figures} that fit what was typed: by name, id, unit, parameters and what they are about. */
    public static List<Found> find(Catalogue catalogue, String typed) {
        return Ranking.rank(
                typed, figures(catalogue).stream().map(Criteria::found).toList());
    }

    private static Found found(Figure figure) {
        String parameters = figure.parameters().stream()
                .map(parameter -> parameter.name() + " " + parameter.help())
                .collect(Collectors.joining(" "));
        String about = figure.scopes().stream()
                .map(scope ->
                        scope == Scope.RIDERS ? "rider group" : scope.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" and "));
        return new Found(figure.id(), figure.name(), figure.unit().symbol(), about + " " + parameters);
    }

    /** Figure, unit, parameters and, where there is one, comparator that go with a figure, by field name. */
    public static Map<String, Optional<?>> choosing(Figure figure, Shape<?> shape, Object item, String currency) {
        Map<String, Optional<?>> values = new LinkedHashMap<>();
        values.put("figure", Optional.of(figure.id()));
        if (shape.indexOf("unit") >= 0 && !figure.unit().equals(Unit.AS_RECORDED)) {
            boolean money = figure.unit().equals(Unit.CURRENCY);
            values.put("unit", Optional.of(money ? currency : figure.unit().symbol()));
        }
        int parameters = shape.indexOf("parameters");
        if (parameters >= 0) {
            values.put("parameters", Optional.of(kept((Settings) shape.value(item, parameters), figure)));
        }
        if (item instanceof Criterion criterion && criterion.comparator() != Criterion.Comparator.BETWEEN) {
            comparator(figure).ifPresent(better -> values.put("comparator", Optional.of(better)));
        }
        return values;
    }

    /** The parameters the figure knows, too. */
    private static Settings kept(Settings given, Figure figure) {
        Settings kept = Settings.NONE;
        for (Parameter parameter : figure.parameters()) {
            Optional<String> value = given.get(parameter.name());
            if (value.isPresent()) {
                kept = kept.with(parameter.name(), value.get());
            }
        }
        return kept;
    }

    private static Optional<Criterion.Comparator> comparator(Figure figure) {
        if (figure.direction() == Direction.NEITHER) {
            return Optional.empty();
        }
        return Optional.of(
                figure.direction() == Direction.HIGHER_IS_BETTER
                        ? Criterion.Comparator.AT_LEAST
                        : Criterion.Comparator.AT_MOST);
    }
}
