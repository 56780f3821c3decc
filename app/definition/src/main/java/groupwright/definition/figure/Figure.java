package groupwright.definition.figure;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** A named pure function of a project: what it means, its unit and formula, where that comes from, and the function. */
public final class Figure {
    private static final int KEPT_SETTINGS = 1000;

    private final Builder parts;
    private final int scopeMask;
    private final Map<Settings, Settings> filled = new ConcurrentHashMap<>(); // a cache, bounded

    private Figure(Builder parts) {
        this.parts = parts;
        this.scopeMask =
                parts.scopes.stream().mapToInt(scope -> 1 << scope.ordinal()).sum();
    }

    /** Starts the description of a figure. */
    public static Builder named(String id, String name) {
        return new Builder(id, name);
    }

    /** As written in criteria, templates and on the command line; never changes. */
    public String id() {
        return parts.id;
    }

    /** As people say it. */
    public String name() {
        return parts.name;
    }

    public Set<Scope> scopes() {
        return EnumSet.copyOf(parts.scopes);
    }

    public Unit unit() {
        return parts.unit;
    }

    public Direction direction() {
        return parts.direction;
    }

    public List<Parameter> parameters() {
        return List.copyOf(parts.parameters);
    }

    /** The formula as it is written in the source. */
    public String formula() {
        return parts.formula;
    }

    public String source() {
        return parts.source;
    }

    /** What the figure neglects. */
    public String leavesOut() {
        return parts.leavesOut;
    }

    /** Differences up to this are none. */
    public double resolution() {
        return parts.resolution;
    }

    /** Digits behind the decimal sign when shown, from the resolution. */
    public int decimals() {
        return (int) Math.max(0, Math.ceil(-Math.log10(parts.resolution) - 1e-9));
    }

    /** Version of the formula; rises when its results change. */
    public int version() {
        return parts.version;
    }

    /** Figures of the same level that it may ask. */
    public Set<String> uses() {
        return new TreeSet<>(parts.uses);
    }

    public Level level() {
        return parts.level;
    }

    public Computation computation() {
        return parts.computation;
    }

    /** The closed form of its band, where it has one. */
    public Optional<BandRule> bandRule() {
        return parts.bandRule;
    }

    public Example example() {
        return parts.example;
    }

    /** Whether this figure may ask another one. */
    public boolean mayAsk(Figure other) {
        return other.level().compareTo(level()) < 0 || parts.uses.contains(other.id());
    }

    Subject checked(Subject subject) {
        if (subject.mask() != scopeMask) {
            throw new Invalid(
                    id(),
                    "is asked about " + (subject.ids().isEmpty() ? "nothing" : subject),
                    parts.scopes.isEmpty() ? "name no record" : "name " + scopeWords());
        }
        return subject;
    }

    private String scopeWords() {
        List<String> words = new ArrayList<>();
        parts.scopes.forEach(scope ->
                words.add("one " + scope.name().toLowerCase(java.util.Locale.ROOT) + " (" + scope.letters() + "-…)"));
        return String.join(" and ", words);
    }

    /**
     * Holds parameters against what the figure takes.
     *
     * @throws Invalid for the first that is unknown, missing or out of its limits
     */
    public void check(Settings given) {
        fillIn(given);
    }

    Settings filledIn(Settings given) {
        Settings known = filled.get(given);
        if (known != null) {
            return known;
        }
        Settings all = fillIn(given);
        if (filled.size() < KEPT_SETTINGS) {
            filled.put(given, all);
            filled.put(all, all);
        }
        return all;
    }

    private Settings fillIn(Settings given) {
        TreeMap<String, String> all = new TreeMap<>();
        for (Parameter parameter : parts.parameters) {
            Optional<String> value = given.get(parameter.name()).or(parameter::usual);
            if (value.isPresent()) {
                parameter.check(value.get());
                all.put(parameter.name(), value.get());
            } else if (parameter.presence() == Parameter.Presence.REQUIRED) {
                throw new Invalid(
                        parameter.name(), "is not given", "add " + parameter.name() + "=…, " + parameter.help());
            }
        }
        for (String name : given.values().keySet()) {
            if (!all.containsKey(name)) {
                throw new Invalid(name, "is no parameter of " + id(), "use " + parameterWords());
            }
        }
        return all.isEmpty() ? Settings.NONE : new Settings(all);
    }

    private String parameterWords() {
        if (parts.parameters.isEmpty()) {
            return "none; it has no parameters";
        }
        return String.join(", ", parts.parameters.stream().map(Parameter::name).toList());
    }

    boolean isUsual(String name, String value) {
        return parts.parameters.stream()
                .anyMatch(p -> p.name().equals(name)
                        && p.usual().map(u -> u.equals(value)).orElse(false));
    }

    @Override
    public String toString() {
        return id();
    }

    /** Collects what a figure is; every part but parameters, uses, band and level must be said. */
    public static final class Builder {
        private final String id;
        private final String name;
        private final Set<Scope> scopes = EnumSet.noneOf(Scope.class);
        private final List<Parameter> parameters = new ArrayList<>();
        private final Set<String> uses = new TreeSet<>();
        private Unit unit = Unit.NONE;
        private Direction direction = Direction.NEITHER;
        private String formula = "";
        private String source = "";
        private String leavesOut = "";
        private double resolution = 1;
        private int version = 1;
        private Level level = Level.CALCULUS;
        private Optional<BandRule> bandRule = Optional.empty();
        private Example example = new Example("", "");
        private Computation computation;

        private Builder(String id, String name) {
            this.id = id;
            this.name = name;
        }

        public Builder of(Scope... about) {
            scopes.addAll(List.of(about));
            return this;
        }

        public Builder in(Unit given) {
            unit = given;
            return this;
        }

        public Builder better(Direction given) {
            direction = given;
            return this;
        }

        public Builder with(Parameter parameter) {
            parameters.add(parameter);
            return this;
        }

        public Builder formula(String given) {
            formula = given;
            return this;
        }

        public Builder source(String given) {
            source = given;
            return this;
        }

        public Builder leavesOut(String given) {
            leavesOut = given;
            return this;
        }

        public Builder resolution(double given) {
            resolution = given;
            return this;
        }

        public Builder version(int given) {
            version = given;
            return this;
        }

        public Builder uses(String... figures) {
            uses.addAll(List.of(figures));
            return this;
        }

        public Builder level(Level given) {
            level = given;
            return this;
        }

        public Builder band(BandRule rule) {
            bandRule = Optional.of(rule);
            return this;
        }

        public Builder example(String ask, String answer) {
            example = new Example(ask, answer);
            return this;
        }

        /** Ends the description with the function itself. */
        public Figure computedBy(Computation given) {
            if (!id.matches("[a-z][a-z0-9-]{1,59}") || name.isBlank()) {
                throw new IllegalArgumentException("\"" + id + "\" is no id of a figure, or it has no name");
            }
            if (formula.isBlank() || source.isBlank() || example.ask().isBlank()) {
                throw new IllegalArgumentException(id + " needs a formula, a source and an example");
            }
            if (!(resolution > 0 && Double.isFinite(resolution)) || version < 1) {
                throw new IllegalArgumentException(id + " needs a resolution above 0 and a version from 1 on");
            }
            computation = given;
            return new Figure(this);
        }
    }
}
