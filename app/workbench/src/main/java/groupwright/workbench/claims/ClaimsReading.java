package groupwright.workbench.claims;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.Assessment.ClaimStanding;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.RecordId;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.claims.ClaimDetail.Signed;
import groupwright.workbench.components.Evidence;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads how claims stand. */
final class ClaimsReading {
    private final View view;
    private final Words words;
    private final Reader reader;
    private final WordingReading wordings;
    private final RestReading rests;

    ClaimsReading(View view, Locale locale) {
        this.view = view;
        this.words = Words.of(ClaimsReading.class, locale);
        this.reader = new Reader(locale);
        this.wordings = new WordingReading(view, locale);
        this.rests = new RestReading(view, words);
    }

    /** All claims. O(claims × criteria of the project). */
    ClaimsSheet sheet() {
        List<ClaimRow> rows = new ArrayList<>();
        new Assessment(view).claims().forEach(standing -> rows.add(row(standing)));
        rows.sort(Comparator.comparing(ClaimRow::group)); // stable: within a group by id
        return new ClaimsSheet(rows);
    }

    private ClaimRow row(ClaimStanding standing) {
        Claim claim = standing.claim();
        ClaimGroup group = ClaimGroup.of(claim, standing.state());
        Wording wording = wordings.of(claim.wording());
        boolean said = group != ClaimGroup.WITHDRAWN && group != ClaimGroup.RETIRED;
        List<Rest> all = said ? rests.of(claim, RestReading.Depth.VALUES) : List.of();
        Optional<Rest> first = first(all);
        Optional<Evidence> evidence = said ? Optional.of(Pins.of(view, claim, all, words.locale())) : Optional.empty();
        return new ClaimRow(
                claim.id(),
                group,
                wording,
                claim.channel(),
                first,
                said ? leads(claim, first) : Optional.empty(),
                evidence,
                new OpenWords(words).of(claim, group, wording, all));
    }

    private static Optional<Address> leads(Claim claim, Optional<Rest> first) {
        return first.flatMap(Rest::leads)
                .or(() -> claim.requirements().stream().findFirst().map(Address::of));
    }

    /** The answer that decides most: a number that moved, one with a limit, any number, then verdicts. */
    private static Optional<Rest> first(List<Rest> all) {
        return all.stream().min(Comparator.comparingInt(ClaimsReading::rank));
    }

    private static int rank(Rest rest) {
        boolean verdict = rest.ask().figure().id().equals("verdict");
        int rank = rest.hasMoved() ? 0 : 4;
        rank += verdict ? 2 : 0;
        return rank + (rest.limit().isEmpty() ? 1 : 0);
    }

    /** One claim in full; nothing where there is none. */
    Optional<ClaimDetail> detail(RecordId id) {
        return new Assessment(view)
                .claims().stream()
                        .filter(standing -> standing.claim().id().equals(id))
                        .findFirst()
                        .map(this::detail);
    }

    private ClaimDetail detail(ClaimStanding standing) {
        Claim claim = standing.claim();
        ClaimGroup group = ClaimGroup.of(claim, standing.state());
        Wording wording = wordings.of(claim.wording());
        Wording basis = wordings.of(claim.basis());
        List<Rest> all = rests.of(claim, RestReading.Depth.INPUTS);
        List<String> broken = new ArrayList<>(wording.wrong());
        all.stream().map(Rest::tip).filter(tip -> !tip.isEmpty()).forEach(broken::add);
        return new ClaimDetail(
                claim.id(),
                group,
                words.text("state." + standing.state().name()),
                new OpenWords(words).of(claim, group, wording, all),
                claim.stateReason(),
                wording,
                basis,
                claim.channel(),
                all,
                broken.stream().distinct().toList(),
                approvals(claim));
    }

    private List<Signed> approvals(Claim claim) {
        Approved approved = new Approved(view, reader, claim);
        List<Signed> signed = new ArrayList<>();
        for (Approval approval : claim.approvals()) {
            List<String> values = new ArrayList<>();
            for (ApprovedAnswer answer : approval.answers()) {
                values.add(approved.named(answer));
            }
            signed.add(new Signed(approval.by(), reader.day(approval.date()), values));
        }
        Collections.reverse(signed);
        return signed;
    }
}
