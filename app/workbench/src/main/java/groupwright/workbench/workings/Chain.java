package groupwright.workbench.workings;

import groupwright.definition.assessment.Asked;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.TestResult;
import groupwright.documents.numbers.TargetText;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.WorkingsSheet.Changed;
import groupwright.workbench.workings.WorkingsSheet.Link;
import groupwright.workbench.workings.WorkingsSheet.Nowhere;
import groupwright.workbench.workings.WorkingsSheet.Step;
import groupwright.workbench.workings.WorkingsSheet.There;
import groupwright.workbench.workings.WorkingsSheet.ToField;
import groupwright.workbench.workings.WorkingsSheet.ToFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The way from need to claim through one figure. Pages join it later, because finding them means making the documents. */
final class Chain {
    private static final int LONGEST = 40;

    private final View view;
    private final Words words;
    private final WorkingsReading.Before before;
    private final TargetText targets;

    Chain(View view, Words words, WorkingsReading.Before before, TargetText targets) {
        this.view = view;
        this.words = words;
        this.before = before;
        this.targets = targets;
    }

    List<Link> of(Ask ask, List<Asked.By> by) {
        List<Link> chain = new ArrayList<>();
        chain.addAll(needs(by));
        chain.addAll(requirements(by));
        chain.add(new Link(
                Step.FIGURE,
                ask.figure().name() + subject(ask),
                new ToFigure(ask),
                There.HERE,
                before.answer(ask).isPresent() ? Changed.YES : Changed.NO));
        chain.addAll(tests(ask, by));
        chain.addAll(claims(ask));
        return chain;
    }

    private static String subject(Ask ask) {
        return ask.subject().ids().stream()
                .map(RecordId::text)
                .reduce((a, b) -> a + ", " + b)
                .map(ids -> ", " + ids)
                .orElse("");
    }

    private List<Link> needs(List<Asked.By> by) {
        List<Link> found = by.stream()
                .flatMap(asked -> asked.requirement().answers().stream())
                .distinct()
                .flatMap(id -> view.definition().get(id, Need.class).stream())
                .map(need -> record(Step.NEED, need.id(), need.id() + " “" + shortened(need.words()) + "”"))
                .toList();
        return found.isEmpty() ? nothing(Step.NEED, by.isEmpty() ? "chain.noNeedAsked" : "chain.noNeed") : found;
    }

    private List<Link> requirements(List<Asked.By> by) {
        List<Link> found = by.stream()
                .map(asked -> new Link(
                        Step.REQUIREMENT,
                        asked.requirement().id() + " " + targets.of(asked.criterion()),
                        new ToField(Address.of(
                                asked.requirement().id(),
                                "criteria",
                                asked.criterion().id(),
                                "target")),
                        There.SOMETHING,
                        changed(Address.of(
                                asked.requirement().id(),
                                "criteria",
                                asked.criterion().id(),
                                "target"))))
                .toList();
        return found.isEmpty() ? nothing(Step.REQUIREMENT, "chain.noRequirement") : found;
    }

    private Changed changed(Address address) {
        return before.field(address).isPresent() ? Changed.YES : Changed.NO;
    }

    private List<Link> tests(Ask ask, List<Asked.By> by) {
        Optional<RecordId> concept = ask.subject().get(Scope.CONCEPT);
        List<Link> found = new ArrayList<>();
        boolean asked = false;
        for (Asked.By one : by) {
            Requirement requirement = one.requirement();
            asked |= requirement.verification() != Requirement.Verification.ANALYSIS;
            for (TestResult result : requirement.results()) {
                if (concept.filter(result.concept()::equals).isPresent()) {
                    found.add(new Link(
                            Step.TEST,
                            requirement.id() + " " + result.quantity().replace('-', ' ') + ", " + result.concept(),
                            new ToField(Address.of(requirement.id(), "results", result.id())),
                            There.SOMETHING,
                            Changed.NO));
                }
            }
        }
        if (!found.isEmpty()) {
            return found;
        }
        return nothing(Step.TEST, by.isEmpty() ? "chain.noTest" : asked ? "chain.testWaits" : "chain.byAnalysis");
    }

    private List<Link> claims(Ask ask) {
        List<Link> found = Asked.restingOn(view, ask).stream()
                .map(claim -> record(Step.CLAIM, claim.id(), claim.id() + " “" + shortened(plain(claim)) + "”"))
                .toList();
        return found.isEmpty() ? nothing(Step.CLAIM, "chain.noClaim") : found;
    }

    private static String plain(Claim claim) {
        return claim.wording().replaceAll("\\{\\{.*?}}", "…");
    }

    private Link record(Step step, RecordId id, String text) {
        return new Link(step, text, new ToField(Address.of(id)), There.SOMETHING, Changed.NO);
    }

    private List<Link> nothing(Step step, String key) {
        return List.of(new Link(step, words.text(key), new Nowhere(), There.NOTHING_YET, Changed.NO));
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1).stripTrailing() + "…";
    }
}
