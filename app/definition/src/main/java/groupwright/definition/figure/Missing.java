package groupwright.definition.figure;

import java.util.Collection;
import java.util.List;

/** No answer, because these inputs are not there. */
public record Missing(List<MissingInput> inputs) implements Answer {
    public Missing {
        inputs = inputs.stream().sorted().distinct().toList();
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException("a missing answer names at least one input");
        }
    }

    /** One missing input. */
    public static Missing of(MissingInput input) {
        return new Missing(List.of(input));
    }

    /** All that is missing in any of these. */
    public static Missing all(Collection<Missing> several) {
        return new Missing(several.stream().flatMap(m -> m.inputs().stream()).toList());
    }
}
