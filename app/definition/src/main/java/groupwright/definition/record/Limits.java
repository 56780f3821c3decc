package groupwright.definition.record;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The least and most a number (or each number of a list) may be. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Limits {
    double least() default Double.NEGATIVE_INFINITY;

    double most() default Double.POSITIVE_INFINITY;
}
