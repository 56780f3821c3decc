package groupwright.definition.figure;

import groupwright.definition.record.Settings;

/** One question to the ledger: a figure, its subject and its parameters with usual values filled in. */
public final class Ask implements Comparable<Ask> {
    private final Figure figure;
    private final Subject subject;
    private final Settings parameters;
    private final int hash;

    /**
     * A question.
     *
     * @throws groupwright.definition.record.Invalid if subject or parameters do not fit the figure
     */
    public Ask(Figure figure, Subject subject, Settings parameters) {
        this.figure = figure;
        this.subject = figure.checked(subject);
        this.parameters = figure.filledIn(parameters);
        this.hash = 31 * (31 * figure.id().hashCode() + subject.hashCode()) + this.parameters.hashCode();
    }

    public Figure figure() {
        return figure;
    }

    public Subject subject() {
        return subject;
    }

    /** With usual values filled in. */
    public Settings parameters() {
        return parameters;
    }

    /** Only those that are not at their usual values. */
    public Settings givenParameters() {
        Settings given = Settings.NONE;
        for (var parameter : parameters.values().entrySet()) {
            if (!figure.isUsual(parameter.getKey(), parameter.getValue())) {
                given = given.with(parameter.getKey(), parameter.getValue());
            }
        }
        return given;
    }

    @Override
    public boolean equals(Object other) {
        return other == this
                || other instanceof Ask ask
                        && ask.hash == hash
                        && ask.figure == figure
                        && ask.subject.equals(subject)
                        && (ask.parameters == parameters || ask.parameters.equals(parameters));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public int compareTo(Ask other) {
        return toString().compareTo(other.toString());
    }

    /** In the figure grammar, for example {@code largest-step C-002 from-teeth=14}; usual values are left out. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(figure.id());
        if (!subject.equals(Subject.NONE)) {
            text.append(' ').append(subject);
        }
        parameters.values().forEach((name, value) -> {
            if (!figure.isUsual(name, value)) {
                text.append(' ').append(name).append('=').append(value);
            }
        });
        return text.toString();
    }
}
