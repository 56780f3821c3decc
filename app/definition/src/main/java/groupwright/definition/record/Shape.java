package groupwright.definition.record;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The one description of a Java record: its fields in order, how to read them and how to make a record of them. Codec,
 * forms, tables, generators and the reference page all work from it.
 *
 * @param <T> the Java record
 */
public final class Shape<T> {
    private static final Map<Class<?>, Shape<?>> KNOWN = new ConcurrentHashMap<>();

    /** Made fit once for exact calls, which cost nothing to prepare. */
    private static final MethodType ACCESSOR = MethodType.methodType(Object.class, Object.class);

    private static final MethodType CONSTRUCTOR = MethodType.methodType(Object.class, Object[].class);

    private final Class<T> type;
    private final List<Component> components;
    private final MethodHandle[] accessors;
    private final MethodHandle constructor;

    private Shape(Class<T> type) {
        RecordComponent[] parts = type.getRecordComponents();
        if (parts == null) {
            throw new IllegalArgumentException(type + " is no Java record");
        }
        this.type = type;
        this.accessors = new MethodHandle[parts.length];
        List<Component> described = new ArrayList<>();
        try {
            MethodHandles.Lookup lookup = MethodHandles.lookup();
            for (int i = 0; i < parts.length; i++) {
                described.add(describe(parts[i]));
                accessors[i] = lookup.unreflect(parts[i].getAccessor()).asType(ACCESSOR);
            }
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            this.constructor = lookup.unreflectConstructor(type.getDeclaredConstructor(types))
                    .asSpreader(Object[].class, types.length)
                    .asType(CONSTRUCTOR);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("the record " + type + " cannot be described", impossible);
        }
        this.components = List.copyOf(described);
    }

    /** The description of a Java record; made once. */
    @SuppressWarnings("unchecked") // the map holds under each class its own shape
    public static <T> Shape<T> of(Class<T> type) {
        Shape<?> known = KNOWN.get(type);
        if (known == null) {
            known = new Shape<>(type); // not computeIfAbsent: shapes contain shapes
            KNOWN.put(type, known);
        }
        return (Shape<T>) known;
    }

    private static Component describe(RecordComponent part) {
        boolean optional = part.getType() == Optional.class;
        Type inner = optional ? argument(part.getGenericType()) : part.getGenericType();
        Limits limits = part.getAnnotation(Limits.class);
        Default missing = part.getAnnotation(Default.class);
        Help help = part.getAnnotation(Help.class);
        return new Component(
                part.getName(),
                type(part, inner),
                optional ? Component.Presence.OPTIONAL : Component.Presence.ALWAYS,
                limits == null ? Double.NEGATIVE_INFINITY : limits.least(),
                limits == null ? Double.POSITIVE_INFINITY : limits.most(),
                Optional.ofNullable(missing).map(Default::value),
                help == null ? "" : help.value());
    }

    @SuppressWarnings("unchecked") // checked by isEnum
    private static FieldType type(RecordComponent part, Type type) {
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            Sized sized = part.getAnnotation(Sized.class);
            return new FieldType.ListOf(
                    type(part, argument(list)),
                    sized == null ? 0 : sized.least(),
                    sized == null ? Integer.MAX_VALUE : sized.most());
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return new FieldType.Text(part.isAnnotationPresent(Required.class));
        } else if (plain == int.class || plain == Integer.class) {
            return new FieldType.Whole();
        } else if (plain == Amount.class) {
            return new FieldType.Number();
        } else if (plain == LocalDate.class) {
            return new FieldType.Day();
        } else if (plain == Settings.class) {
            return new FieldType.Parameters();
        } else if (plain == RecordId.class) {
            RefersTo refers = part.getAnnotation(RefersTo.class);
            return refers == null ? new FieldType.OwnId() : new FieldType.Reference(refers.value());
        } else if (plain.isEnum()) {
            return new FieldType.Choice((Class<? extends Enum<?>>) plain);
        } else if (plain.isRecord()) {
            return new FieldType.Nested(of(plain));
        }
        throw new IllegalArgumentException(part + " has a type no field may have");
    }

    private static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    public Class<T> type() {
        return type;
    }

    public List<Component> components() {
        return components;
    }

    /** Position of a field by its name; -1 where there is none. */
    public int indexOf(String name) {
        for (int i = 0; i < components.size(); i++) {
            if (components.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /** The value of the field at a position. */
    public Object value(Object record, int position) {
        try {
            return (Object) accessors[position].invokeExact(record);
        } catch (Throwable broken) {
            throw new IllegalStateException(
                    "accessor of " + components.get(position).name() + " failed", broken);
        }
    }

    /**
     * A record of these values.
     *
     * @param values one for each component, in order
     * @throws Invalid if a limit or a rule of the record is broken; names the field
     */
    public T create(Object... values) {
        for (int i = 0; i < values.length; i++) {
            LimitCheck.check(components.get(i), values[i]);
        }
        try {
            return type.cast((Object) constructor.invokeExact(values));
        } catch (RuntimeException | Error refused) {
            throw refused;
        } catch (Throwable broken) {
            throw new IllegalStateException("constructor of " + type + " failed", broken);
        }
    }

    /**
     * Holds one value against the limits of its field.
     *
     * @throws Invalid if it breaks one
     */
    public void check(int position, Object value) {
        LimitCheck.check(components.get(position), value);
    }

    /**
     * Holds a record against the limits of its description, its inner objects too.
     *
     * @throws Invalid for the first field that breaks one
     */
    public void check(Object record) {
        for (int i = 0; i < components.size(); i++) {
            LimitCheck.check(components.get(i), value(record, i));
        }
    }
}
