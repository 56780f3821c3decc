package groupwright.definition.assessment;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.LiveText;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Support;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The questions a claim rests on: figures in its wording, figures among its supports, verdicts of its requirements.
 *
 * @param asks the questions, each once, by their text in the claim
 * @param broken what could not be read, each a sentence without a full stop
 */
record Basis(Map<String, Ask> asks, List<String> broken) {
    static Basis of(
            String wording,
            List<Support> supports,
            List<RecordId> requirements,
            Catalogue catalogue,
            Optional<RecordId> lead) {
        Map<String, Ask> asks = new LinkedHashMap<>();
        List<String> broken = new ArrayList<>();
        try {
            for (FigureText text : LiveText.parse(wording).figures()) {
                add(text, catalogue, lead, asks);
            }
        } catch (Invalid invalid) {
            broken.add("the wording: " + invalid.wrong() + "; " + invalid.remedy());
        }
        for (Support support : supports) {
            try {
                add(FigureText.parse(support.figure()), catalogue, lead, asks);
            } catch (Invalid invalid) {
                broken.add("support " + support.id() + ": " + invalid.wrong() + "; " + invalid.remedy());
            }
        }
        for (RecordId requirement : requirements) {
            if (lead.isEmpty()) {
                broken.add("the project names no lead concept; set leadConcept in project.json");
            } else {
                addVerdict(lead.get(), requirement, catalogue, asks, broken);
            }
        }
        return new Basis(asks, broken);
    }

    static Basis of(Claim claim, Catalogue catalogue, Optional<RecordId> lead) {
        return of(claim.wording(), claim.supports(), claim.requirements(), catalogue, lead);
    }

    private static void addVerdict(
            RecordId lead, RecordId requirement, Catalogue catalogue, Map<String, Ask> asks, List<String> broken) {
        Figure verdict = catalogue.find(VerdictFigures.VERDICT).orElseThrow();
        try {
            Ask ask = new Ask(verdict, Subject.of(lead, requirement), Settings.NONE);
            asks.putIfAbsent(ask.toString(), ask);
        } catch (IllegalArgumentException wrongKind) {
            broken.add("there is no verdict on " + requirement + " for " + lead
                    + "; name a requirement, and a concept as leadConcept in project.json");
        }
    }

    private static void add(FigureText text, Catalogue catalogue, Optional<RecordId> lead, Map<String, Ask> asks) {
        Ask ask = text.resolve(catalogue, lead);
        if (ask.figure().level() == Level.COVERAGE) {
            throw new Invalid(
                    "", ask.figure().id() + " speaks of the project, not the product", "rest on another figure");
        }
        asks.putIfAbsent(ask.toString(), ask);
    }

    boolean isEmpty() {
        return asks.isEmpty() && broken.isEmpty();
    }
}
