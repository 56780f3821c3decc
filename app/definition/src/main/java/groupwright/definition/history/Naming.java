package groupwright.definition.history;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what an edit is called from the fields it changed. */
public final class Naming {
    private static final int LONGEST_WORDS = 24; // characters; longer texts are not said in a name

    private final Definition before;
    private final Definition after;

    private Naming(Definition before, Definition after) {
        this.before = before;
        this.after = after;
    }

    /** The name of the way from one state to the other; says the weightiest change and counts the others. */
    public static EditName between(Definition before, Definition after) {
        return of(before, after, RecordDiff.between(before, after));
    }

    /**
     * The same where the changes are known.
     *
     * @param changes all fields that differ
     */
    static EditName of(Definition before, Definition after, List<FieldChange> changes) {
        Naming naming = new Naming(before, after);
        return changes.stream()
                .min(Comparator.comparingInt(Naming::rank)) // the first of equals
                .map(first -> naming.name(first, changes.size() - 1))
                .orElse(new EditName(
                        EditName.Act.NOTHING,
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        0,
                        Optional.empty()));
    }

    private static int rank(FieldChange change) {
        List<String> path = change.address().path();
        if (path.isEmpty()) {
            return 0;
        } else if (path.equals(List.of("retired"))) {
            return 1;
        }
        return change.address().equals(Address.of(RecordId.PROJECT, "leadConcept")) ? 2 : 3;
    }

    private EditName name(FieldChange change, int more) {
        EditName.Act act = act(change);
        boolean said = act == EditName.Act.SET && more == 0;
        return new EditName(
                act == EditName.Act.SET && !said ? EditName.Act.CHANGE : act,
                Optional.of(change.address()),
                field(change),
                said ? change.before().map(value -> whole(change, value)) : Optional.empty(),
                said ? change.after().map(value -> whole(change, value)) : Optional.empty(),
                said ? unit(change) : "",
                more,
                Optional.empty());
    }

    private static EditName.Act act(FieldChange change) {
        List<String> path = change.address().path();
        Object value = change.after().or(change::before).orElseThrow();
        if (path.isEmpty()) {
            return change.before().isEmpty() ? EditName.Act.ADD : EditName.Act.REMOVE;
        } else if (path.equals(List.of("retired"))) {
            return isBlank(change.after()) ? EditName.Act.USE_AGAIN : EditName.Act.RETIRE;
        } else if (value instanceof Item && change.before().isEmpty()) {
            return EditName.Act.ADD_ITEM;
        } else if (value instanceof Item && change.after().isEmpty()) {
            return EditName.Act.REMOVE_ITEM;
        } else if (value instanceof List<?> list && RecordDiff.hasItems(list)) {
            return EditName.Act.REORDER;
        }
        return isShort(change.before()) && isShort(change.after()) ? EditName.Act.SET : EditName.Act.CHANGE;
    }

    private static boolean isBlank(Optional<Object> value) {
        return value.filter(text -> !text.equals("")).isEmpty();
    }

    private static boolean isShort(Optional<Object> value) {
        return value.isEmpty()
                || value.get() instanceof String text && text.length() <= LONGEST_WORDS && text.indexOf('\n') < 0
                || value.get() instanceof Amount
                || value.get() instanceof Integer
                || value.get() instanceof Enum<?>
                || value.get() instanceof RecordId
                || value.get() instanceof LocalDate;
    }

    private static String field(FieldChange change) {
        List<String> path = change.address().path();
        int last = path.size() - 1;
        boolean item =
                change.after().or(change::before).filter(Item.class::isInstance).isPresent();
        return last < 0 ? "" : NameWords.field(path.get(item ? last - 1 : last));
    }

    /** Money stands in minor units and is said in whole ones. */
    private Object whole(FieldChange change, Object value) {
        if (!isMoney(change) || !(value instanceof Amount amount)) {
            return value;
        }
        int digits = digits();
        return new Amount(scaled(amount.value(), digits), scaled(amount.plusMinus(), digits));
    }

    private static double scaled(double value, int digits) {
        return BigDecimal.valueOf(value).movePointLeft(digits).doubleValue();
    }

    private int digits() {
        String code = after.project().currency();
        Set<String> known = Currency.getAvailableCurrencies().stream()
                .map(Currency::getCurrencyCode)
                .collect(Collectors.toSet());
        return known.contains(code) ? Math.max(0, Currency.getInstance(code).getDefaultFractionDigits()) : 2;
    }

    private static boolean isMoney(FieldChange change) {
        List<String> path = change.address().path();
        return path.get(path.size() - 1).endsWith("_minor");
    }

    /** The unit that ends the field's name, or the one that stands beside it as a field of its own. */
    private String unit(FieldChange change) {
        boolean number =
                change.after().or(change::before).filter(Naming::isNumber).isPresent();
        if (!number) {
            return "";
        } else if (isMoney(change)) {
            return after.project().currency();
        }
        Address address = change.address();
        List<String> outer = address.path().subList(0, address.path().size() - 1);
        String name = address.path().get(outer.size());
        return holder(after, address, outer)
                .or(() -> holder(before, address, outer))
                .map(object -> unit(object, name))
                .orElse("");
    }

    private static boolean isNumber(Object value) {
        return value instanceof Amount || value instanceof Integer;
    }

    private static Optional<Object> holder(Definition definition, Address address, List<String> outer) {
        return definition.value(new Address(address.record(), outer));
    }

    private static String unit(Object object, String name) {
        Shape<?> shape = Shape.of(object.getClass());
        int beside = shape.indexOf("unit");
        String own = shape.components().get(shape.indexOf(name)).unit();
        return own.isEmpty() && beside >= 0 ? (String) shape.value(object, beside) : own;
    }
}
