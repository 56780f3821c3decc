package groupwright.documents.project;

import groupwright.definition.figure.MissingInput;
import groupwright.definition.record.Address;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.FieldLabel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fields that are to be filled, in the reader's words. */
record MissingText(Labels labels) {
    /** The field's name; made of the name in the record where the language has no words for it. */
    String field(Address address) {
        List<String> path = address.path();
        String key = "field." + (path.isEmpty() ? "" : path.get(path.size() - 1));
        return labels.has(key) ? labels.text(key) : FieldLabel.of(address);
    }

    /**
     * Each field once with what to write there, fields of one name together. What to write is said in English alone; in
     * another language the field's name must do.
     *
     * @param place how the document says where a field is
     */
    String remedies(Collection<MissingInput> inputs, Function<Address, String> place) {
        Map<Address, String> byField = new TreeMap<>();
        inputs.forEach(input -> byField.putIfAbsent(input.address(), input.remedy()));
        Map<String, List<Address>> byName = new LinkedHashMap<>();
        byField.keySet()
                .forEach(field -> byName.computeIfAbsent(field(field), any -> new ArrayList<>())
                        .add(field));
        return byName.entrySet().stream()
                .map(same -> same.getKey() + " ("
                        + same.getValue().stream().map(place).collect(Collectors.joining(labels.text("list.separator")))
                        + ")" + told(same.getValue(), byField))
                .collect(Collectors.joining("; "));
    }

    private String told(List<Address> fields, Map<Address, String> remedies) {
        return labels.locale().getLanguage().equals("en")
                ? ": " + fields.stream().map(remedies::get).distinct().collect(Collectors.joining("; "))
                : "";
    }
}
