package groupwright.workbench.form;

import groupwright.workbench.notation.Notation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A row with what it is bound to.
 *
 * @param object path of the object that holds the field
 * @param path path of the field, as refusals name it
 * @param value what stands there in a root object
 * @param notation its notation in a root object
 * @param spread the fields of the object that a typed value sets
 */
record BoundRow(
        FieldRow row,
        List<String> object,
        List<String> path,
        Function<Object, Optional<?>> value,
        Function<Object, Notation> notation,
        Spread spread) {
    /** Fields of an object by name. */
    interface Spread {
        Map<String, Optional<?>> values(Object object, Optional<?> typed);
    }
}
