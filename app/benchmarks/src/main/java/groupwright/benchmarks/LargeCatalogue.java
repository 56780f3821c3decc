package groupwright.benchmarks;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Field;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;

/** Figures shaped like those of the program: a shared one about concept and riders, and a verdict for each requirement. */
final class LargeCatalogue {
    private final Catalogue catalogue = new Catalogue(List.of(reach(), askedOf(), verdict()));

    Catalogue catalogue() {
        return catalogue;
    }

    private static Figure.Builder named(String id, Scope... scopes) {
        return Figure.named(id, id)
                .of(scopes)
                .formula("made up")
                .source("made up")
                .example(id, "0");
    }

    private static Figure reach() {
        return named("reach", Scope.CONCEPT, Scope.RIDERS).in(Unit.MILLIMETRE).computedBy(in -> {
            RecordId concept = in.subject(Scope.CONCEPT);
            List<Integer> cogs = in.get(concept, Concept.COGS);
            double ratio = (double) in.get(concept, Concept.RINGS).get(0) / cogs.get(cogs.size() - 1);
            double rollOut = in.required(in.subject(Scope.RIDERS), RiderGroup.ROLL_OUT);
            return Quantity.of(ratio * rollOut * in.amount(RecordId.PROJECT, Project.AIR_DENSITY), Unit.MILLIMETRE);
        });
    }

    private static Figure askedOf() {
        return named("asked-of", Scope.RIDERS)
                .computedBy(in -> Quantity.of(
                        in.referring(Requirement.RIDERS, in.subject(Scope.RIDERS))
                                        .size()
                                + in.referringToNone(Requirement.RIDERS).size(),
                        Unit.NONE));
    }

    private static Figure verdict() {
        return named("toy-verdict", Scope.CONCEPT, Scope.RIDERS, Scope.REQUIREMENT)
                .level(Level.ASSESSMENT)
                .computedBy(LargeCatalogue::judge);
    }

    private static Answer judge(Inputs in) {
        RecordId requirement = in.subject(Scope.REQUIREMENT);
        RecordId group = in.subject(Scope.RIDERS);
        List<RecordId> named = in.get(requirement, Requirement.RIDERS);
        if (!named.isEmpty() && !named.contains(group)) {
            return new Word("not-asked", "");
        }
        Subject subject = Subject.of(in.subject(Scope.CONCEPT), group);
        Answer answer = in.ask(field(in, requirement, Criterion.FIGURE), subject);
        Band band = in.band("reach", subject, Settings.NONE);
        double value = ((Quantity) answer).value();
        Amount target = field(in, requirement, Criterion.TARGET);
        boolean atLeast = field(in, requirement, Criterion.COMPARATOR) == Criterion.Comparator.AT_LEAST;
        double margin = atLeast ? value - target.value() : target.value() - value;
        boolean close = band instanceof Band.Between between
                && between.low() <= target.value()
                && target.value() <= between.high();
        return new Verdict(
                margin >= 0 ? Verdict.Outcome.MEETS : Verdict.Outcome.MISSES,
                close ? Verdict.Certainty.TOO_CLOSE_TO_CALL : Verdict.Certainty.CERTAIN,
                answer,
                margin,
                Optional.of(100 * margin / target.value()),
                band,
                subject,
                "k1");
    }

    private static <T> T field(Inputs in, RecordId requirement, Field<Criterion, T> field) {
        return in.item(requirement, Requirement.CRITERIA, "k1", field).orElseThrow();
    }

    /** The questions about all requirements: for each concept and rider group. Ids are those of the project's own records. */
    Ask[][] verdicts(Definition definition) {
        Figure figure = catalogue.find("toy-verdict").orElseThrow();
        Ask[][] all = new Ask[LargeProject.REQUIREMENTS][];
        for (int i = 0; i < all.length; i++) {
            RecordId requirement = id(definition, LargeProject.requirement(i));
            all[i] = new Ask[LargeProject.CONCEPTS * LargeProject.GROUPS];
            for (int k = 0; k < all[i].length; k++) {
                RecordId concept = id(definition, LargeProject.concept(k / LargeProject.GROUPS));
                RecordId group = id(definition, LargeProject.group(k % LargeProject.GROUPS));
                all[i][k] = new Ask(figure, Subject.of(concept, group, requirement), Settings.NONE);
            }
        }
        return all;
    }

    private static RecordId id(Definition definition, RecordId like) {
        return definition.get(like).orElseThrow().id();
    }
}
