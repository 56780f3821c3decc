package groupwright.documents.project;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.documents.numbers.Conversion;
import groupwright.documents.template.TemplateLimits;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The author's guide to templates with the reference of all that they can ask, as Markdown. */
final class TemplateGuide {
    private TemplateGuide() {}

    /** The whole page. */
    static String markdown(Catalogue catalogue, Iterable<String> projectWords) {
        String text = prose();
        Map<String, String> parts = new TreeMap<>(TemplateLimits.shown());
        parts.put("words", words(projectWords));
        parts.put("figures", figures(catalogue));
        parts.put("units", units());
        parts.put("blocks", blocks());
        parts.put("kinds", String.join(", ", Kinds.words()));
        parts.put("fields", fields());
        for (Map.Entry<String, String> part : parts.entrySet()) {
            text = text.replace("${" + part.getKey() + "}", part.getValue());
        }
        return text;
    }

    private static String prose() {
        try (InputStream stream = TemplateGuide.class.getResourceAsStream("template-guide.md")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the guide to templates cannot be read", broken);
        }
    }

    private static String words(Iterable<String> projectWords) {
        StringBuilder list = new StringBuilder();
        projectWords.forEach(word ->
                list.append(list.isEmpty() ? "" : ", ").append('`').append(word).append('`'));
        return list + ".";
    }

    private static String figures(Catalogue catalogue) {
        StringBuilder table =
                new StringBuilder("| figure | shows | asked about | unit | parameters |\n|---|---|---|---|---|\n");
        for (Figure figure : catalogue.all()) {
            table.append("| `")
                    .append(figure.id())
                    .append("` | ")
                    .append(figure.name())
                    .append(" | ")
                    .append(figure.scopes().stream().map(TemplateGuide::scope).collect(Collectors.joining(", ")))
                    .append(" | ")
                    .append(figure.unit().symbol())
                    .append(" | ")
                    .append(figure.parameters().stream()
                            .map(TemplateGuide::parameter)
                            .collect(Collectors.joining("; ")))
                    .append(" |\n");
        }
        return table.toString().stripTrailing();
    }

    private static String scope(Scope scope) {
        return scope.name().toLowerCase(Locale.ROOT) + " (" + scope.letters() + ")";
    }

    private static String parameter(Parameter parameter) {
        String usual = parameter
                .usual()
                .map(value -> ", usually " + value)
                .orElse(parameter.presence() == Parameter.Presence.REQUIRED ? ", must be given" : "");
        return "`" + parameter.name() + "=` " + parameter.help() + usual;
    }

    private static String units() {
        return Conversion.units().stream()
                .map(unit -> String.join(", ", Conversion.unitsFor(unit)))
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .collect(Collectors.joining("; "));
    }

    private static String blocks() {
        List<Blocks.Named> sorted = Blocks.ALL.stream()
                .sorted(java.util.Comparator.comparing(Blocks.Named::name))
                .toList();
        StringBuilder text = new StringBuilder();
        for (Blocks.Named block : sorted) {
            BlockHelp help = block.help();
            text.append("### ")
                    .append(block.name())
                    .append("\n\n")
                    .append(help.says())
                    .append(".");
            text.append(help.arguments().isEmpty() ? "" : " Behind its name stands " + help.arguments() + ".");
            text.append("\n\n````markdown\n").append(help.example()).append("\n````\n\n");
        }
        return text.toString().stripTrailing();
    }

    private static String fields() {
        StringBuilder table = new StringBuilder("| kind | fields |\n|---|---|\n");
        for (String kind : Kinds.words()) {
            table.append("| ")
                    .append(kind)
                    .append(" | `")
                    .append(String.join("`, `", RecordFields.of(Kinds.of(kind)).keySet()));
            table.append("` |\n");
        }
        return table.toString().stripTrailing();
    }
}
