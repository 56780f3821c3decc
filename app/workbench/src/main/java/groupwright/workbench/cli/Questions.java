package groupwright.workbench.cli;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * What is asked when figures of a whole project are wanted: each figure about each of its subjects.
 *
 * @param asks the questions, by figure, then subject, then parameters
 * @param leftOut figures that cannot be asked without being told more
 */
record Questions(List<Ask> asks, List<LeftOut> leftOut) {
    /** A figure that was not asked, and what to do about it. */
    record LeftOut(String figure, String wrong, String remedy) {}

    Questions {
        asks = List.copyOf(asks);
        leftOut = List.copyOf(leftOut);
    }

    /** All figures of the calculus. */
    static Questions all(OpenProject project, Selection selection) {
        List<Ask> asks = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (Figure figure : project.view().catalogue().all()) {
            if (figure.level() == Level.CALCULUS) {
                try {
                    asks.addAll(asks(project, selection, figure, Settings.NONE));
                } catch (Invalid untold) {
                    leftOut.add(new LeftOut(figure.id(), untold.field() + " " + untold.wrong(), untold.remedy()));
                }
            }
        }
        return new Questions(asks, leftOut);
    }

    /**
     * The figures that texts name; records named in a text go before the selection.
     *
     * @throws Invalid if a figure is unknown, or its records or parameters do not fit it
     */
    static Questions about(OpenProject project, Selection selection, List<FigureText> texts) {
        List<Ask> asks = new ArrayList<>();
        for (FigureText text : texts) {
            text.records().forEach(project::checkPresent);
            Subject named = named(project, text);
            Figure figure = project.view()
                    .catalogue()
                    .find(text.figure())
                    .orElseGet(() -> resolved(project, text)); // which says that there is none, and what is near
            if (!figure.scopes().containsAll(named.scopes())) {
                resolved(project, text); // which says what it is asked about
            }
            asks.addAll(asks(project, selection.narrowedTo(named), figure, text.parameters()));
        }
        return new Questions(asks.stream().distinct().toList(), List.of());
    }

    private static Figure resolved(OpenProject project, FigureText text) {
        return text.resolve(project.view().catalogue(), project.assessment().lead())
                .figure();
    }

    private static Subject named(OpenProject project, FigureText text) {
        try {
            Subject named = Subject.of(text.records());
            return text.lead() == FigureText.Lead.NAMED ? named.with(project.lead()) : named;
        } catch (IllegalArgumentException twice) {
            throw new Invalid(text.figure(), twice.getMessage(), "name each kind once");
        }
    }

    private static List<Ask> asks(OpenProject project, Selection selection, Figure figure, Settings given) {
        List<Ask> asks = new ArrayList<>();
        for (Subject subject : selection.subjects(figure.scopes(), project.definition())) {
            for (Settings settings : ParameterChoice.of(project.definition(), figure, subject, given)) {
                asks.add(new Ask(figure, subject, settings));
            }
        }
        return asks;
    }
}
