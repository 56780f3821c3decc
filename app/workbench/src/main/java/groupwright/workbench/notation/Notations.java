package groupwright.workbench.notation;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.record.Component;
import groupwright.definition.record.Definition;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Shape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** The notation of every field that holds plain values; the one place where a field type gets its notation. */
public final class Notations {
    private final FieldWords words;
    private final Supplier<Definition> definition;
    private final Catalogue catalogue;

    /**
     * @param locale the reader's
     * @param definition the project as it is when a text is read or shown, for titles of records
     */
    public Notations(Locale locale, Supplier<Definition> definition, Catalogue catalogue) {
        this.words = new FieldWords(locale);
        this.definition = definition;
        this.catalogue = catalogue;
    }

    /** What is said about fields. */
    public FieldWords words() {
        return words;
    }

    /** All figures. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** The project as it is. */
    public Definition definition() {
        return definition.get();
    }

    /** Whether a field is one line or so of text: no object, and no list of objects. */
    public static boolean isPlain(FieldType type) {
        return !(type instanceof FieldType.Nested)
                && !(type instanceof FieldType.ListOf list && list.element() instanceof FieldType.Nested);
    }

    /** Whether a field names a figure: it is called so and parameters stand beside it. */
    public static boolean namesFigure(Shape<?> shape, Component component) {
        return component.name().equals("figure")
                && shape.components().stream().anyMatch(other -> other.type() instanceof FieldType.Parameters);
    }

    /** The unit shown behind a field: its own, or what the field {@code unit} beside it says. */
    public static String unit(Shape<?> shape, Component component, Object object) {
        boolean number = component.type() instanceof FieldType.Number;
        int beside = shape.indexOf("unit");
        return component.unit().isEmpty() && number && beside >= 0
                ? (String) shape.value(object, beside)
                : component.unit();
    }

    /**
     * The notation of a plain field of an object.
     *
     * @param object the record or item, for the unit and the figure that stand beside the field
     */
    public Notation of(Shape<?> shape, Component component, Object object) {
        if (namesFigure(shape, component)) {
            return new FigureNotation(words, component, catalogue);
        }
        return of(component, component.type(), unit(shape, component, object), figure(shape, object));
    }

    /** The notation of one parameter of a figure. */
    public Notation of(Parameter parameter) {
        return new ParameterNotation(words, parameter);
    }

    /** The figure that an object names in its field {@code figure}, if there is such a figure. */
    public Optional<Figure> figure(Shape<?> shape, Object object) {
        int position = shape.indexOf("figure");
        return position < 0
                ? Optional.empty()
                : catalogue.find(shape.value(object, position).toString());
    }

    /** The records a reference may name; nothing where a field names none. */
    public Optional<RecordChoices> choices(FieldType type) {
        if (type instanceof FieldType.Reference reference) {
            return Optional.of(new RecordChoices(definition, RecordKinds.of(reference.kind())));
        }
        return type instanceof FieldType.ListOf list ? choices(list.element()) : Optional.empty();
    }

    /** The words a choice allows; none where a field is no choice. */
    public static List<String> allowed(FieldType type) {
        return type instanceof FieldType.Choice choice
                ? java.util.Arrays.stream(choice.type().getEnumConstants())
                        .map(FieldWords::word)
                        .toList()
                : List.of();
    }

    private Notation of(Component component, FieldType type, String unit, Optional<Figure> figure) {
        if (type instanceof FieldType.Text text) {
            return new TextNotation(words, component, text);
        } else if (type instanceof FieldType.Whole) {
            return new WholeNotation(words, component);
        } else if (type instanceof FieldType.Number) {
            return new AmountNotation(words, component, unit);
        } else if (type instanceof FieldType.Choice choice) {
            return new ChoiceNotation(words, component, choice);
        } else if (type instanceof FieldType.Day) {
            return new DayNotation(words, component);
        } else if (type instanceof FieldType.Reference reference) {
            return new ReferenceNotation(
                    words,
                    component,
                    RecordKinds.of(reference.kind()),
                    choices(reference).orElseThrow());
        } else if (type instanceof FieldType.Parameters) {
            return new SettingsNotation(words, figure);
        } else if (type instanceof FieldType.ListOf list) {
            return ListNotation.of(words, component, list, of(component, list.element(), unit, figure));
        } else if (type instanceof FieldType.OwnId) {
            return new OwnIdNotation(words);
        }
        throw new IllegalArgumentException(component.name() + " holds an object, which no line of text can hold");
    }
}
