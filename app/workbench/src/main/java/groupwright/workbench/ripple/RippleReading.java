package groupwright.workbench.ripple;

import groupwright.definition.assessment.ClaimState;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.history.FieldChange;
import groupwright.definition.history.Ripple;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import groupwright.workbench.ripple.RippleSheet.Item;
import groupwright.workbench.ripple.RippleSheet.Row;
import groupwright.workbench.ripple.RippleSheet.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts a ripple into words; asks nothing of the ledger. O(changes + effects). */
public final class RippleReading {
    private final Definition before;
    private final Definition after;
    private final Words words;
    private final Reader reader;
    private final AnswerText text;

    public RippleReading(Definition before, Definition after, Locale locale) {
        this.before = before;
        this.after = after;
        this.words = Words.of(RippleReading.class, locale);
        this.reader = new Reader(locale);
        this.text = new AnswerText(reader);
    }

    /** The sheet of a ripple. */
    public RippleSheet of(Ripple ripple) {
        EditedText edited = new EditedText(before, after, text, words);
        List<Row> rows = new ArrayList<>();
        for (FieldChange change : ripple.changes()) {
            EditedText.Edited one = edited.of(change);
            rows.add(new Row(
                    Section.EDITED,
                    one.what(),
                    one.before(),
                    one.after(),
                    Optional.of(one.address()),
                    Optional.empty()));
        }
        ripple.effects().forEach(effect -> rows.add(row(effect)));
        rows.sort(java.util.Comparator.comparing(Row::section)); // stable: within a section as asked
        return new RippleSheet(edited.line(ripple.changes()), items(ripple), rows);
    }

    private static Section section(Ask ask) {
        return switch (ask.figure().id()) {
            case "verdict" -> Section.VERDICTS;
            case "claim-state" -> Section.CLAIMS;
            default -> Section.FIGURES;
        };
    }

    private Row row(Ripple.Effect effect) {
        Section section = section(effect.ask());
        return new Row(
                section,
                section == Section.FIGURES ? figure(effect.ask()) : name(effect.ask()),
                effect.before().map(answer -> shown(effect.ask(), answer)).orElse("–"),
                effect.after().map(answer -> shown(effect.ask(), answer)).orElse("–"),
                record(effect.ask()).map(Address::of),
                Optional.of(effect.ask()));
    }

    private static String figure(Ask ask) {
        return (ask.figure().name() + ", " + ask.subject()).replaceAll(", $", "");
    }

    private String shown(Ask ask, Answer answer) {
        if (answer instanceof Word word && !word.detail().isEmpty()) {
            return word.word() + ": " + word.detail();
        }
        return answer instanceof Verdict verdict && verdict.value() instanceof Quantity
                ? verdict.words() + ", " + margin(verdict)
                : text.of(ask, answer).text();
    }

    private static String margin(Verdict verdict, Reader reader) {
        Quantity quantity = (Quantity) verdict.value();
        String number = reader.signed(verdict.margin(), decimals(verdict.margin()));
        return quantity.unit().symbol().isEmpty()
                ? number
                : number + "\u202F" + quantity.unit().symbol();
    }

    /** Small margins need more digits to be told from none. */
    private static int decimals(double margin) {
        return Math.abs(margin) >= 100 ? 0 : Math.abs(margin) >= 1 ? 1 : 2;
    }

    private String margin(Verdict verdict) {
        return words.text("margin", margin(verdict, reader));
    }

    /** The requirement or claim a watched answer speaks of. */
    private static Optional<RecordId> record(Ask ask) {
        return ask.subject()
                .get(Scope.REQUIREMENT)
                .or(() -> ask.subject().get(Scope.CLAIM))
                .or(() -> ask.subject().get(Scope.CONCEPT));
    }

    /** The requirement or claim; another concept than the lead is named with it. */
    private String name(Ask ask) {
        String record = record(ask).map(RecordId::text).orElse(ask.toString());
        Optional<RecordId> concept = ask.subject().get(Scope.CONCEPT);
        boolean other = concept.isPresent()
                && !concept.equals(after.project().leadConcept())
                && ask.subject().has(Scope.REQUIREMENT);
        return other ? words.text("for", record, concept.get().text()) : record;
    }

    private List<Item> items(Ripple ripple) {
        List<Item> items = new ArrayList<>();
        List<Ripple.Effect> verdicts = of(ripple, Section.VERDICTS);
        List<Ripple.Effect> turned = verdicts.stream()
                .filter(effect -> !words(effect.before()).equals(words(effect.after())))
                .toList();
        many(turned, "verdict", effect -> words.text("now", name(effect.ask()), words(effect.after())), items);
        if (turned.isEmpty()) {
            verdicts.stream().findFirst().flatMap(this::stays).ifPresent(items::add);
        }
        List<Ripple.Effect> claims = of(ripple, Section.CLAIMS);
        many(
                claims.stream()
                        .filter(effect -> isAgain(effect.after())
                                && !words(effect.before()).equals(words(effect.after())))
                        .toList(),
                "claim",
                effect -> name(effect.ask()),
                items);
        many(
                claims.stream()
                        .filter(effect -> !isAgain(effect.after())
                                && !words(effect.before()).equals(words(effect.after())))
                        .toList(),
                "claimOther",
                effect -> words.text("now", name(effect.ask()), words(effect.after())),
                items);
        many(of(ripple, Section.FIGURES), "figure", effect -> figure(effect.ask()), items);
        return items;
    }

    private static List<Ripple.Effect> of(Ripple ripple, Section section) {
        return ripple.effects().stream()
                .filter(effect -> section(effect.ask()) == section)
                .toList();
    }

    private static String words(Optional<Answer> answer) {
        if (answer.orElse(null) instanceof Verdict verdict) {
            return verdict.words();
        }
        return answer.orElse(null) instanceof Word word ? word.word() : "–";
    }

    private static boolean isAgain(Optional<Answer> answer) {
        return words(answer).equals(ClaimState.CHANGED_SINCE_APPROVAL.word())
                || words(answer).equals(ClaimState.RECALCULATED.word());
    }

    private interface Naming {
        String of(Ripple.Effect effect);
    }

    /** One is named; of several there is the count and the first. */
    private void many(List<Ripple.Effect> effects, String key, Naming naming, List<Item> items) {
        if (effects.isEmpty()) {
            return;
        }
        Ripple.Effect first = effects.get(0);
        Optional<Address> leadsTo = record(first.ask()).map(Address::of);
        String text = effects.size() == 1
                ? words.text(key + ".one", naming.of(first))
                : words.text(key + ".many", Integer.toString(effects.size()), naming.of(first));
        items.add(new Item(text, leadsTo));
    }

    private Optional<Item> stays(Ripple.Effect effect) {
        if (effect.before().orElse(null) instanceof Verdict was
                && effect.after().orElse(null) instanceof Verdict is
                && was.value() instanceof Quantity
                && is.value() instanceof Quantity) {
            return Optional.of(new Item(
                    words.text("stays", name(effect.ask()), is.words(), margin(was, reader), margin(is, reader)),
                    record(effect.ask()).map(Address::of)));
        }
        return Optional.empty();
    }
}
