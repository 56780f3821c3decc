package groupwright.workbench.claims;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Approving, withdrawing and proposing: asks in place for what they need, and has the window do them. */
final class Decisions {
    private static final int ROLE_WIDTH = 180;
    private static final int DATE_WIDTH = 110;
    private static final int REASON_WIDTH = 320;

    private final Bench bench;
    private final Words words;
    private final FieldWords fields;
    private final Clock clock;
    private final List<Runnable> watchers = new ArrayList<>();
    private Optional<AskPanel> asking = Optional.empty();
    private String role = ""; // remembered for the session: the same person signs a whole list

    Decisions(Bench bench, Words words, Clock clock) {
        this.bench = bench;
        this.words = words;
        this.fields = new FieldWords(bench.locale());
        this.clock = clock;
    }

    void whenAskingChanges(Runnable watcher) {
        watchers.add(watcher);
    }

    /** The question that stands open. */
    Optional<AskPanel> asking() {
        return asking;
    }

    /** Takes an open question back. */
    void leave() {
        if (asking.isPresent()) {
            ask(Optional.empty());
        }
    }

    private void ask(Optional<AskPanel> next) {
        asking = next;
        watchers.forEach(Runnable::run);
        next.ifPresent(panel -> panel.field(0).requestFocusInWindow());
    }

    private void refuse(Invalid why) {
        asking.ifPresent(panel -> panel.refuse(fields.refusal(why, why.field())));
    }

    void askApproval(RecordId id) {
        ask(Optional.of(new AskPanel(
                bench.locale(),
                List.of(
                        new AskPanel.Field(words.text("approve.by"), role, ROLE_WIDTH),
                        new AskPanel.Field(
                                words.text("approve.date"), LocalDate.now(clock).toString(), DATE_WIDTH)),
                words.text("do.approve", id),
                () -> approve(id),
                words.text("approve.leave"),
                this::leave)));
    }

    private void approve(RecordId id) {
        AskPanel panel = asking.orElseThrow();
        Optional<LocalDate> date = day(panel.text(1));
        if (panel.text(0).isBlank()) {
            panel.refuse(words.text("approve.noRole"));
        } else if (date.isEmpty()) {
            panel.refuse(words.text("approve.noDate", panel.text(1), LocalDate.now(clock)));
        } else {
            role = panel.text(0).strip();
            String by = role;
            bench.ask(view -> Signing.approve(view, id, by, date.get()), outcome -> decided(id, outcome));
        }
    }

    private void decided(RecordId id, Signing.Outcome outcome) {
        if (outcome instanceof Signing.Outcome.Refused refused) {
            refuse(refused.why());
        } else if (outcome instanceof Signing.Outcome.Approved approved) {
            bench.edit(Optional.of(words.text("do.approve", id)), Signing.write(approved), this::refuse);
        }
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException noDay) {
            return Optional.empty(); // said where it was typed
        }
    }

    void askReason(RecordId id) {
        ask(Optional.of(new AskPanel(
                bench.locale(),
                List.of(new AskPanel.Field(words.text("withdraw.why", id), "", REASON_WIDTH)),
                words.text("withdraw.now", id),
                () -> bench.edit(
                        Optional.of(words.text("withdraw.now", id)),
                        Signing.withdraw(id, asking.orElseThrow().text(0)),
                        this::refuse),
                words.text("approve.leave"),
                this::leave)));
    }

    void propose(RecordId id) {
        bench.edit(Optional.of(words.text("do.propose", id)), Signing.propose(id), why -> tell(id, why));
    }

    private void tell(RecordId id, Invalid why) {
        bench.tell(new groupwright.definition.problem.Problem(
                "", 0, 0, id.text(), why.field(), why.wrong(), why.remedy()));
    }
}
