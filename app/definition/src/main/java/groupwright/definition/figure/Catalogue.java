package groupwright.definition.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;

/**
 * All figures by id; checked when made: no id stands twice, every figure asked is there, no figures ask each other in a
 * circle. A figure may name itself, to follow records from one to the next; it then asks for {@link Inputs#circle} first.
 */
public final class Catalogue {
    private final TreeMap<String, Figure> figures = new TreeMap<>();
    private final Map<String, Figure> byId; // the same, found faster: figures ask each other by id

    /**
     * A catalogue of these figures.
     *
     * @throws IllegalArgumentException if an id stands twice, a figure uses one that is not there or of a higher level, or
     *     figures use each other in a circle
     */
    public Catalogue(Collection<Figure> given) {
        for (Figure figure : given) {
            if (figures.put(figure.id(), figure) != null) {
                throw new IllegalArgumentException("two figures have the id " + figure.id());
            }
        }
        byId = new HashMap<>(figures);
        for (Figure figure : figures.values()) {
            figure.uses().forEach(used -> checkUse(figure, used));
        }
        Set<String> done = new HashSet<>();
        for (Figure figure : figures.values()) {
            checkAcyclic(figure, new ArrayDeque<>(), done);
        }
    }

    /** The figures of all families on the class path. */
    public static Catalogue ofServices() {
        List<Figure> found = new ArrayList<>();
        for (FigureFamily family : ServiceLoader.load(FigureFamily.class, Catalogue.class.getClassLoader())) {
            found.addAll(family.figures());
        }
        return new Catalogue(found);
    }

    private void checkUse(Figure figure, String used) {
        Figure other = figures.get(used);
        if (other == null) {
            throw new IllegalArgumentException(figure.id() + " uses " + used + ", which is no figure");
        }
        if (other.level().compareTo(figure.level()) > 0) {
            throw new IllegalArgumentException(figure.id() + " uses " + used + ", which stands above it");
        }
    }

    private void checkAcyclic(Figure figure, Deque<String> way, Set<String> done) {
        if (way.contains(figure.id())) {
            way.addLast(figure.id());
            throw new IllegalArgumentException("figures use each other in a circle: " + String.join(" -> ", way));
        }
        if (!done.contains(figure.id())) {
            way.addLast(figure.id());
            figure.uses().stream()
                    .filter(used ->
                            !used.equals(figure.id())) // itself about another record: that is the ledger's to watch
                    .forEach(used -> checkAcyclic(figures.get(used), way, done));
            way.removeLast();
            done.add(figure.id());
        }
    }

    /** The figure with this id. */
    public Optional<Figure> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** All figures in the order of their ids. */
    public List<Figure> all() {
        return List.copyOf(figures.values());
    }
}
