package groupwright.definition.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What can be done to a list of items: add, duplicate, remove, move. All O(items). */
public final class ItemList {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,9})");

    private ItemList() {}

    /**
     * A project with one of its lists changed.
     *
     * @throws Invalid if there is no such list or the record refuses the new one
     */
    public static Definition edit(Definition definition, Address list, UnaryOperator<List<? extends Item>> change) {
        return definition.with(list, Optional.of(change.apply(items(definition.value(list)))));
    }

    @SuppressWarnings("unchecked") // an address of a list of items leads to one
    private static List<? extends Item> items(Optional<Object> value) {
        return (List<? extends Item>)
                value.orElseThrow(() -> new Invalid("", "there is no such list", "the record may have been removed"));
    }

    /** With an item at the end; under another id where its own is taken. */
    public static List<? extends Item> added(List<? extends Item> list, Item item) {
        List<Item> copy = new ArrayList<>(list);
        copy.add(ids(list).contains(item.id()) ? named(item, freeId(list, item.id())) : item);
        return List.copyOf(copy);
    }

    /** With a copy of an item right behind it. */
    public static List<? extends Item> duplicated(List<? extends Item> list, String id) {
        List<Item> copy = new ArrayList<>(list);
        int at = position(list, id);
        copy.add(at + 1, named(list.get(at), freeId(list, id)));
        return List.copyOf(copy);
    }

    /** Without an item. */
    public static List<? extends Item> removed(List<? extends Item> list, String id) {
        List<Item> copy = new ArrayList<>(list);
        copy.remove(position(list, id));
        return List.copyOf(copy);
    }

    /** With an item moved by some places; it stops at the ends. */
    public static List<? extends Item> moved(List<? extends Item> list, String id, int by) {
        List<Item> copy = new ArrayList<>(list);
        int from = position(list, id);
        int to = Math.max(0, Math.min(list.size() - 1, from + by));
        Collections.rotate(copy.subList(Math.min(from, to), Math.max(from, to) + 1), from < to ? -1 : 1);
        return List.copyOf(copy);
    }

    /** An id not in the list yet: the number at its end counted up, or a number put behind it. */
    public static String freeId(List<? extends Item> list, String like) {
        Set<String> taken = ids(list);
        Matcher numbered = NUMBERED.matcher(like);
        String stem = numbered.matches() ? numbered.group(1) : like + "-";
        int number = numbered.matches() ? Integer.parseInt(numbered.group(2)) : 1;
        String id = like;
        while (taken.contains(id)) {
            number++;
            id = stem + number;
        }
        return id;
    }

    private static Item named(Item item, String id) {
        return (Item) ObjectEdit.with(item, List.of(), Map.of("id", Optional.of(id)));
    }

    private static Set<String> ids(List<? extends Item> list) {
        Set<String> ids = new HashSet<>();
        list.forEach(item -> ids.add(item.id()));
        return ids;
    }

    private static int position(List<? extends Item> list, String id) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new Invalid(id, "there is no such entry", "it may have been removed");
    }
}
