package groupwright.definition.sensitivity;

import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One number of a field changed alone.
 *
 * @param from as it is
 * @param to as tried
 * @param changed the definition with it; empty where records refuse both the larger and the smaller number
 */
record Trial(double from, double to, Optional<Definition> changed) {
    /** A field's numbers, each changed alone; none for a field of words. */
    static List<Trial> of(Definition definition, Workings.FieldInput input, StatedChange change) {
        Object value = unwrapped(input.value());
        if (value instanceof Amount amount) {
            double by = amount.value() * change.pct() / 100;
            return amount.value() == 0
                    ? List.of() // no share of nothing
                    : List.of(trial(definition, input, amount.value(), by, amount::withValue));
        } else if (value instanceof Integer count) {
            return List.of(trial(definition, input, count, 1, tried -> (int) tried));
        } else if (value instanceof List<?> list) {
            return inList(definition, input, list, change);
        }
        return List.of();
    }

    /** A field of an object in a list that may be empty is empty in two ways. */
    private static Object unwrapped(Object value) {
        return value instanceof Optional<?> optional
                ? optional.map(Trial::unwrapped).orElse("")
                : value;
    }

    private static List<Trial> inList(
            Definition definition, Workings.FieldInput input, List<?> list, StatedChange change) {
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            int at = i;
            if (list.get(i) instanceof Integer count) {
                trials.add(trial(definition, input, count, 1, tried -> replaced(list, at, (int) tried)));
            } else if (list.get(i) instanceof Amount amount && amount.value() != 0) {
                double by = amount.value() * change.pct() / 100;
                trials.add(trial(
                        definition, input, amount.value(), by, tried -> replaced(list, at, amount.withValue(tried))));
            }
        }
        return trials;
    }

    private static List<Object> replaced(List<?> list, int at, Object element) {
        List<Object> changed = new ArrayList<>(list);
        changed.set(at, element);
        return changed;
    }

    /** What a field holds once the number is another. */
    private interface Holding {
        Object of(double number);
    }

    private static Trial trial(
            Definition definition, Workings.FieldInput input, double from, double by, Holding holding) {
        for (double to : new double[] {from + by, from - by}) {
            try {
                return new Trial(from, to, Optional.of(definition.with(input.address(), Optional.of(holding.of(to)))));
            } catch (Invalid refused) {
                continue; // the smaller number may do: 45 teeth cannot become 46 below a cog of 46
            }
        }
        return new Trial(from, from, Optional.empty());
    }
}
