package groupwright.definition.reference;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.ValueText;
import java.util.stream.Collectors;

/** The reference page of all figures, as Markdown. */
public final class FigurePage {
    private FigurePage() {}

    /** The whole page. */
    public static String markdown(Catalogue catalogue) {
        StringBuilder text =
                new StringBuilder("# Figures\n\nEvery figure with its formula and one evaluated example on the");
        text.append(" example project. Generated from the figures themselves; do not edit by hand.\n\n");
        text.append(
                "A figure is named the same way everywhere: its id, the records it is asked about, its parameters, for");
        text.append(" example `largest-step C-002 from-teeth=14`. `lead` stands for the lead concept.\n");
        for (Figure figure : catalogue.all()) {
            section(figure, text);
        }
        return text.toString();
    }

    private static void section(Figure figure, StringBuilder text) {
        text.append("\n## `")
                .append(figure.id())
                .append("`: ")
                .append(figure.name())
                .append("\n\n");
        line("Asked about", figure.scopes().stream().map(FigurePage::scope).collect(Collectors.joining(", ")), text);
        line("Unit", figure.unit().symbol(), text);
        line(
                "Better",
                figure.direction() == groupwright.definition.figure.Direction.NEITHER
                        ? ""
                        : ValueText.word(figure.direction()).replace('-', ' '),
                text);
        for (Parameter parameter : figure.parameters()) {
            String usual = parameter
                    .usual()
                    .map(value -> "usually " + value + "; ")
                    .orElse(parameter.presence() == Parameter.Presence.OPTIONAL ? "may be left out; " : "");
            String limits = parameter.limits().isEmpty() ? "" : parameter.limits() + "; ";
            line("Parameter `" + parameter.name() + "`", limits + usual + parameter.help(), text);
        }
        line("Formula", figure.formula(), text);
        line("Source", figure.source(), text);
        line("Leaves out", figure.leavesOut(), text);
        line("Resolution", ValueText.number(figure.resolution()), text);
        line("Version", Integer.toString(figure.version()), text);
        line(
                "Example",
                "`" + figure.example().ask() + "` gives " + figure.example().answer(),
                text);
    }

    private static String scope(Scope scope) {
        return scope.name().toLowerCase(java.util.Locale.ROOT) + " (" + scope.letters() + ")";
    }

    private static void line(String label, String value, StringBuilder text) {
        if (!value.isEmpty()) {
            text.append("- ").append(label).append(": ").append(value).append('\n');
        }
    }
}
