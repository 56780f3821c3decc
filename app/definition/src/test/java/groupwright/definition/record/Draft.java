package groupwright.definition.record;

import java.util.Arrays;
import java.util.List;

/** The values of a record that is yet to be made, by the names of its fields. */
final class Draft {
    private final Shape<?> shape;
    private final Object[] values;

    Draft(Shape<?> shape) {
        this.shape = shape;
        this.values = new Object[shape.components().size()];
        Arrays.fill(values, List.of());
    }

    Class<?> type() {
        return shape.type();
    }

    @SuppressWarnings("unchecked") // whoever asks knows the type of the field
    <T> T get(String name) {
        return (T) values[shape.indexOf(name)];
    }

    void set(String name, Object value) {
        values[shape.indexOf(name)] = value;
    }

    Object create() {
        return shape.create(values);
    }
}
