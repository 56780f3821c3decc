package groupwright.workbench.notation;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Component;
import java.util.List;
import java.util.Optional;

/** A figure: kept as its id, shown by its name, typed either way. */
record FigureNotation(FieldWords words, Component component, Catalogue catalogue) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(String.class::cast)
                .map(id -> catalogue.find(id).map(Figure::name).orElse(id))
                .orElse("");
    }

    @Override
    public Typed read(String text) {
        String typed = text.strip();
        if (typed.isEmpty()) {
            return words.refused("figure.required");
        }
        for (Figure figure : catalogue.all()) {
            if (figure.id().equals(typed) || figure.name().equalsIgnoreCase(typed)) {
                return Typed.of(figure.id());
            }
        }
        List<String> names = catalogue.all().stream().map(Figure::name).toList();
        return Nearest.of(typed, names)
                .map(near -> words.refused("figure.near", Shortened.of(text), near))
                .orElseGet(() -> words.refused("figure.unknown", Shortened.of(text)));
    }
}
