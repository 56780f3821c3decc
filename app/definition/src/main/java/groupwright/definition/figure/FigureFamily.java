package groupwright.definition.figure;

import java.util.List;

/** A family of figures; found through {@link java.util.ServiceLoader}. */
public interface FigureFamily {
    /** Its figures. */
    List<Figure> figures();
}
