package groupwright.workbench.notation;

import groupwright.definition.figure.Figure;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Parameters of a figure, {@code name=value} one a line or parted by blanks; held against the figure where it is known. */
record SettingsNotation(FieldWords words, Optional<Figure> figure) implements Notation {
    private static final Pattern AROUND_EQUALS = Pattern.compile("\\s*=\\s*");

    @Override
    public String shown(Optional<?> value) {
        return value.map(Settings.class::cast)
                .map(settings -> settings.values().entrySet().stream()
                        .map(entry -> entry.getKey() + "=" + entry.getValue())
                        .collect(Collectors.joining("\n")))
                .orElse("");
    }

    @Override
    public Typed read(String text) {
        TreeMap<String, String> values = new TreeMap<>();
        String joined = AROUND_EQUALS.matcher(text.strip()).replaceAll("=");
        for (String pair : joined.isEmpty() ? new String[0] : joined.split("[\\s;]+")) {
            int equals = pair.indexOf('=');
            if (equals <= 0 || equals == pair.length() - 1) {
                return words.refused("settings.not", Shortened.of(pair));
            }
            String value = pair.substring(equals + 1);
            String pointed = value.replace(',', '.').replace('\u2212', '-');
            if (values.put(pair.substring(0, equals), Settings.isNumber(pointed) ? pointed : value) != null) {
                return words.refused("settings.twice", pair.substring(0, equals));
            }
        }
        try {
            Settings settings = new Settings(values);
            figure.ifPresent(known -> known.check(settings));
            return Typed.of(settings);
        } catch (Invalid invalid) {
            return new Typed.Refused(words.refusal(invalid, invalid.field()));
        }
    }
}
