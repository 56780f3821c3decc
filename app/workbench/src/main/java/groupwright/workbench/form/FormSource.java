package groupwright.workbench.form;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.Item;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Where the object of a form stands, and where its edits go. */
interface FormSource {
    /** The object as it is; nothing where it is gone. */
    Optional<Object> object();

    /** Whether a field is still to be given, so that what the object holds there may not be shown. */
    boolean isAsked(List<String> path);

    /** What stood in a field before the last step, if that changed it. */
    Optional<Object> before(List<String> path);

    /** Replaces fields of one object inside. */
    void edit(List<String> object, Map<String, Optional<?>> values, Consumer<Invalid> refused);

    /** Changes a list of items. */
    void list(String name, List<String> list, UnaryOperator<List<? extends Item>> change, Consumer<Invalid> refused);
}
