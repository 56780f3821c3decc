package groupwright.workbench.requirements;

import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.BandPart;
import groupwright.definition.quality.Check;
import groupwright.definition.record.Address;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.UnitSuffix;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.requirements.Detail.Link;
import groupwright.workbench.requirements.Detail.Next;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What would move a requirement one rung up, computed from how it stands. */
final class NextStep {
    private static final int MOST_FIELDS = 3;

    private final Reading reading;
    private final Optional<RecordId> lead;
    private final RowReading rows;

    NextStep(Reading reading, Optional<RecordId> lead) {
        this.reading = reading;
        this.lead = lead;
        this.rows = new RowReading(reading, lead);
    }

    Next of(Requirement requirement) {
        if (!requirement.isCurrent()) {
            return only("next.retired");
        } else if (requirement.state() == Requirement.State.PARKED) {
            return only("next.parked");
        } else if (requirement.criteria().isEmpty()) {
            return unmeasured(requirement);
        } else if (lead.isEmpty()) {
            Address field = Address.of(RecordId.PROJECT, "leadConcept");
            return new Next(reading.text("next.noLead"), List.of(link(field)));
        }
        return measured(requirement, reading.assessment().verdict(requirement.id(), lead.get()));
    }

    private Next only(String key, Object... parts) {
        return new Next(reading.text(key, parts), List.of());
    }

    private static Link link(Address address) {
        String field = address.path().isEmpty() ? "" : " · " + FieldLabel.of(address);
        return new Link(address.record() + field, "", address);
    }

    private Next unmeasured(Requirement requirement) {
        boolean several = reading.findings(requirement).stream().anyMatch(finding -> finding.check() == Check.SEVERAL);
        return only(several ? "next.split" : "next.choose");
    }

    private Next measured(Requirement requirement, Verdict verdict) {
        Optional<Criterion> criterion = requirement.criteria().stream()
                .filter(one -> one.id().equals(verdict.criterion()))
                .findFirst();
        if (verdict.outcome() == Verdict.Outcome.MISSING_INPUT || criterion.isEmpty()) {
            return missing(verdict.missing());
        } else if (verdict.certainty() == Verdict.Certainty.TOO_CLOSE_TO_CALL) {
            return close(criterion.get(), verdict);
        } else if (verdict.missesForCertain()) {
            return miss(requirement, criterion.get(), verdict);
        }
        return met(requirement);
    }

    private Next missing(List<MissingInput> inputs) {
        String first = inputs.get(0).remedy();
        String sentence = inputs.size() == 1
                ? reading.text("next.missing", first)
                : reading.text("next.missing.more", first, Integer.toString(inputs.size() - 1));
        return new Next(
                sentence,
                inputs.stream()
                        .map(MissingInput::address)
                        .distinct()
                        .limit(MOST_FIELDS)
                        .map(NextStep::link)
                        .toList());
    }

    private Next close(Criterion criterion, Verdict verdict) {
        List<BandPart> parts =
                rows.ask(criterion, verdict).map(reading.view()::bandParts).orElse(List.of());
        if (parts.isEmpty()) {
            return only("next.close", name(criterion), band(criterion, verdict));
        }
        BandPart widest = parts.get(0);
        double all =
                parts.stream().mapToDouble(part -> part.half() * part.half()).sum();
        double rest = Math.sqrt(Math.max(0, all - widest.half() * widest.half()));
        String key = Math.abs(verdict.margin()) > rest ? "next.close.one" : "next.close.first";
        return new Next(
                reading.text(
                        key,
                        FieldLabel.of(widest.address()),
                        widest.address().record().text(),
                        new ShownValue(
                                        reading.reader().exact(widest.amount().plusMinus()),
                                        UnitSuffix.shown(widest.address()
                                                .path()
                                                .get(widest.address().path().size() - 1)))
                                .text()),
                List.of(link(widest.address())));
    }

    private String band(Criterion criterion, Verdict verdict) {
        if (!(verdict.band() instanceof Band.Between between)) {
            return "";
        }
        return reading.text(
                "target.range",
                reading.number(criterion.figure(), between.low(), 0),
                new ShownValue(reading.number(criterion.figure(), between.high(), 0), criterion.unit()).text());
    }

    private String name(Criterion criterion) {
        String name = rows.name(criterion);
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private Next miss(Requirement requirement, Criterion criterion, Verdict verdict) {
        Quantity quantity = (Quantity) verdict.value();
        boolean tooLow = quantity.value() < criterion.target().value();
        String by = new ShownValue(
                        reading.number(criterion.figure(), Math.abs(verdict.margin()), more(criterion, verdict)),
                        quantity.unit().symbol())
                .text();
        String is = reading.shown(criterion.figure(), quantity).text();
        String groups = requirement.riders().isEmpty()
                ? reading.text("next.miss.riders")
                : reading.listed(requirement.riders());
        String key = tooLow ? "next.miss.raise" : "next.miss.lower";
        return only(key, name(criterion), by, is, reading.targets().of(criterion), groups);
    }

    /** A margin that rounds to none gets one digit more. */
    private int more(Criterion criterion, Verdict verdict) {
        String plain = reading.number(criterion.figure(), Math.abs(verdict.margin()), 0);
        return plain.chars().noneMatch(c -> c >= '1' && c <= '9') ? 1 : 0;
    }

    private Next met(Requirement requirement) {
        Optional<Rung> rung = reading.assessment()
                .standing(requirement.id(), lead.orElseThrow())
                .rung();
        if (requirement.state() == Requirement.State.DRAFT) {
            return new Next(reading.text("next.agree"), List.of(link(Address.of(requirement.id(), "state"))));
        } else if (rung.equals(Optional.of(Rung.TESTED))) {
            return only("next.tested");
        } else if (requirement.verification() == Requirement.Verification.ANALYSIS) {
            return only("next.analysis");
        }
        return new Next(
                reading.text(
                        "next.test",
                        reading.text(
                                "verification." + requirement.verification().name()),
                        lead.get().text()),
                List.of(link(Address.of(requirement.id(), "results"))));
    }
}
