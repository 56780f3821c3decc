package groupwright.workbench.requirements;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import groupwright.workbench.notation.Notations;
import groupwright.workbench.notation.Typed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A criterion as it is typed.
 *
 * @param parameters what is typed for each parameter of the figure; blank leaves one at its usual value
 */
record CriterionDraft(
        Figure figure,
        Map<String, String> parameters,
        Criterion.Comparator comparator,
        String target,
        String upper,
        String unit) {
    CriterionDraft {
        parameters = Map.copyOf(parameters);
    }

    /** What came of reading it: a criterion, or what is wrong by the name of the field. */
    record Read(Optional<Criterion> criterion, Map<String, String> wrong) {}

    Read read(Notations notations) {
        Map<String, String> wrong = new LinkedHashMap<>();
        Settings settings = settings(notations, wrong);
        Optional<Amount> least = amount(notations, "target", target, wrong);
        Optional<Amount> most = comparator == Criterion.Comparator.BETWEEN
                ? amount(notations, "upper", upper, wrong)
                : Optional.empty();
        if (!wrong.isEmpty()) {
            return new Read(Optional.empty(), wrong);
        }
        try {
            figure.check(settings);
            return new Read(
                    Optional.of(new Criterion(
                            "k1",
                            figure.id(),
                            settings,
                            comparator,
                            least.orElseThrow(),
                            most,
                            unit.strip(),
                            Optional.empty())),
                    wrong);
        } catch (Invalid invalid) {
            wrong.put(invalid.field(), notations.words().refusal(invalid, invalid.field()));
            return new Read(Optional.empty(), wrong);
        }
    }

    private Settings settings(Notations notations, Map<String, String> wrong) {
        Settings settings = Settings.NONE;
        for (Parameter parameter : figure.parameters()) {
            String typed = parameters.getOrDefault(parameter.name(), "");
            Typed read = notations.of(parameter).read(typed);
            if (read instanceof Typed.Refused refused) {
                wrong.put(parameter.name(), refused.sentence());
            } else if (((Typed.Value) read).value().isPresent()) {
                settings = settings.with(
                        parameter.name(), ((Typed.Value) read).value().get().toString());
            }
        }
        return settings;
    }

    /** Both limits are required once they are asked for, so an empty one is refused in the words of the target. */
    private Optional<Amount> amount(Notations notations, String name, String typed, Map<String, String> wrong) {
        Shape<?> shape = Shape.of(Criterion.class);
        Component component = shape.components().get(shape.indexOf("target"));
        Criterion beside = new Criterion(
                "k1",
                figure.id(),
                Settings.NONE,
                Criterion.Comparator.AT_LEAST,
                Amount.of(0),
                Optional.empty(),
                unit.strip(),
                Optional.empty());
        Typed read = notations.of(shape, component, beside).read(typed);
        if (read instanceof Typed.Refused refused) {
            wrong.put(name, refused.sentence());
            return Optional.empty();
        }
        return ((Typed.Value) read).value().map(Amount.class::cast);
    }
}
