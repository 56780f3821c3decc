package groupwright.workbench.shell;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.history.FieldChange;
import groupwright.definition.history.Ripple;
import groupwright.definition.record.Address;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.workings.WorkingsReading;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the last step changed, looked up by field and by question. */
final class RecentStep implements Bench.Recent, WorkingsReading.Before {
    /** Before the first step. */
    static final RecentStep NONE = new RecentStep(Map.of(), Map.of());

    private final Map<Address, Object> fields;
    private final Map<Ask, Answer> answers;

    private RecentStep(Map<Address, Object> fields, Map<Ask, Answer> answers) {
        this.fields = Map.copyOf(fields);
        this.answers = Map.copyOf(answers);
    }

    static RecentStep of(Ripple ripple) {
        Map<Address, Object> fields = new HashMap<>();
        for (FieldChange change : ripple.changes()) {
            fields.put(change.address(), change.before().orElse(""));
        }
        Map<Ask, Answer> answers = new HashMap<>();
        for (Ripple.Effect effect : ripple.effects()) {
            effect.before().ifPresent(before -> answers.put(effect.ask(), before));
        }
        return new RecentStep(fields, answers);
    }

    @Override
    public Optional<Object> before(Address field) {
        return Optional.ofNullable(fields.get(field));
    }

    @Override
    public Set<Ask> asks() {
        return answers.keySet();
    }

    @Override
    public Optional<Object> field(Address address) {
        return before(address);
    }

    @Override
    public Optional<Answer> answer(Ask ask) {
        return Optional.ofNullable(answers.get(ask));
    }
}
