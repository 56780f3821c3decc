package groupwright.definition.cassettes;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.Verdicts;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Holds cassettes against every requirement whose answer changes with the cogs: developments, cadence on climbs, spin-out,
 * steps, mismatch, capacity, what the bikes leave room for. A weight that is limited moves by the estimates of the cogs.
 *
 * <p>It keeps a ledger of its own, which moves from cassette to cassette, so that each costs only what its cogs touch; not
 * for use by several threads at once.
 */
public final class CassetteJudge {
    private static final int DEEPEST = 500;

    private final RecordId concept;
    private final SprocketMass mass;
    private final Definition base;
    private final Ledger ledger;
    private final List<OnCogs> criteria;
    private final List<Ask> verdicts; // one for each criterion
    private final List<RiderGroup> riders;
    private final Map<RecordId, List<Ask>> aboutRiders;
    private final double baseMassG;

    private CassetteJudge(Definition base, Ledger ledger, RecordId concept, SprocketMass mass) {
        this.base = base;
        this.ledger = ledger;
        this.concept = concept;
        this.mass = mass;
        this.riders = new Assessment(ledger).riderGroups();
        this.criteria = criteria();
        this.verdicts = criteria.stream().map(this::verdict).toList();
        this.aboutRiders = new TreeMap<>();
        riders.forEach(group -> aboutRiders.put(group.id(), about(group.id())));
        this.baseMassG = mass.cassetteG(cassette(concept(base)));
    }

    /**
     * A judge for cassettes in a concept.
     *
     * @param view the project
     * @param concept the concept whose cogs are replaced
     * @param rings the rings it has instead of its own; nothing for its own
     * @param mass how the mass of sprockets is estimated
     * @throws IllegalArgumentException if there is no such concept
     */
    public static CassetteJudge of(View view, RecordId concept, Optional<List<Integer>> rings, SprocketMass mass) {
        Concept found = view.definition()
                .get(concept, Concept.class)
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no concept " + concept + "; name one of the project, for example C-001"));
        Definition definition = view.definition();
        if (rings.isPresent() && !rings.get().equals(found.rings())) {
            definition = definition
                    .with(Address.of(concept, "excludedGears"), Optional.of(List.of()))
                    .with(Address.of(concept, "rings"), Optional.of(rings.get()));
        }
        return new CassetteJudge(definition, new Ledger(view.catalogue(), definition, DEEPEST), concept, mass);
    }

    /** The criteria that are held against each cassette, in the order of requirements. */
    public List<OnCogs> judgedBy() {
        return criteria;
    }

    /** The rider groups whose requirements are looked at apart. */
    public List<RiderGroup> riders() {
        return riders;
    }

    /** The concept as it stands, judged like the cassettes. */
    public Judged today() {
        return judge(cassette(concept(base)));
    }

    private static Cassette cassette(Concept concept) {
        return new Cassette(concept.cogs().stream().map(Cog::new).toList());
    }

    private Concept concept(Definition definition) {
        return definition.get(concept, Concept.class).orElseThrow();
    }

    private List<OnCogs> criteria() {
        List<OnCogs> found = new ArrayList<>();
        for (Requirement requirement : new Assessment(ledger).requirements()) {
            if (requirement.state() != Requirement.State.PARKED) {
                for (Criterion criterion : requirement.criteria()) {
                    OnCogs one = new OnCogs(requirement, criterion);
                    if (one.isWeight() || readsCogs(one)) {
                        found.add(one);
                    }
                }
            }
        }
        return List.copyOf(found);
    }

    private boolean readsCogs(OnCogs one) {
        Address cogs = Address.of(concept, "cogs");
        return ledger.trace(verdict(one)).stream()
                .anyMatch(input -> input.address().equals(cogs));
    }

    private Ask verdict(OnCogs one) {
        return ask("criterion-verdict " + concept + " " + one.requirement().id() + " criterion="
                + one.criterion().id());
    }

    private Ask ask(String text) {
        return FigureText.parse(text).resolve(ledger.catalogue(), Optional.empty());
    }

    /**
     * Holds a cassette against the requirements. Cost: what the ledger asks again after an edit of the cogs, some
     * milliseconds.
     */
    public Judged judge(Cassette cassette) {
        ledger.moveTo(with(cassette));
        List<Judged.Held> held = new ArrayList<>();
        for (int i = 0; i < criteria.size(); i++) {
            OnCogs one = criteria.get(i);
            Verdict verdict = (Verdict) ledger.ask(verdicts.get(i));
            held.add(new Judged.Held(one, one.isWeight() ? moved(one, verdict, cassette) : verdict));
        }
        return new Judged(cassette, held, byRiders());
    }

    /** The definition in which the concept has these cogs. */
    public Definition with(Cassette cassette) {
        return CogChange.in(base, concept, cassette);
    }

    private List<Ask> about(RecordId group) {
        return criteria.stream()
                .filter(one -> one.requirement().riders().contains(group))
                .map(one -> one.requirement().id())
                .distinct()
                .map(requirement -> ask("verdict-for-riders " + concept + " " + group + " " + requirement))
                .toList();
    }

    private Map<RecordId, Verdict> byRiders() {
        Map<RecordId, Verdict> worst = new TreeMap<>();
        aboutRiders.forEach((group, asks) -> Verdicts.worst(
                        asks.stream().map(ask -> (Verdict) ledger.ask(ask)).toList())
                .ifPresent(verdict -> worst.put(group, verdict)));
        return worst;
    }

    /** The verdict on a weight with the cogs of the concept, as they stand, replaced by the estimate of others. */
    private Verdict moved(OnCogs one, Verdict verdict, Cassette cassette) {
        if (!(verdict.value() instanceof Quantity grams)) {
            return verdict;
        }
        boolean basic = one.criterion().figure().equals("mass-basic");
        double allowance = basic ? 0 : base.project().allowanceEstimated_pct().value() / 100;
        double side = one.criterion().figure().equals("mass-margin") ? -1 : 1;
        double change = side * (mass.cassetteG(cassette) - baseMassG) * (1 + allowance);
        Quantity moved = new Quantity(grams.value() + change, grams.unit(), grams.remark());
        Band band = verdict.band() instanceof Band.Between between
                ? new Band.Between(between.low() + change, between.high() + change)
                : verdict.band();
        return Verdicts.on(one.requirement().id(), one.criterion(), moved, band, verdict.at());
    }
}
