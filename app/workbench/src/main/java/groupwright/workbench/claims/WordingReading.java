package groupwright.workbench.claims;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.LiveText;
import groupwright.definition.figure.Missing;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.notation.FieldWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Fills the live numbers of a wording in, as of today, in the reader's digits. */
final class WordingReading {
    private final View view;
    private final AnswerText text;
    private final FieldWords fields;

    WordingReading(View view, Locale locale) {
        this.view = view;
        this.text = new AnswerText(new Reader(locale));
        this.fields = new FieldWords(locale);
    }

    /** The wording; a text that cannot be read stands as it was typed, with the reason. */
    Wording of(String typed) {
        List<LiveText.Segment> segments;
        try {
            segments = LiveText.parse(typed).segments();
        } catch (Invalid invalid) {
            return new Wording(List.of(new Wording.Said(typed)), List.of(refusal(invalid)));
        }
        List<Wording.Part> parts = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (LiveText.Segment segment : segments) {
            if (segment instanceof LiveText.Plain plain) {
                parts.add(new Wording.Said(plain.text()));
            } else if (segment instanceof LiveText.Live live) {
                parts.add(number(live, wrong));
            }
        }
        return new Wording(parts, wrong);
    }

    private Wording.Part number(LiveText.Live live, List<String> wrong) {
        try {
            Ask ask = live.figure()
                    .resolve(view.catalogue(), view.definition().project().leadConcept());
            Answer answer = view.ask(ask);
            if (answer instanceof Missing missing) {
                wrong.add(FieldWords.sentenceCase(text.missing(missing)) + ".");
            }
            return new Wording.Number(ask, text.of(ask, answer));
        } catch (Invalid invalid) {
            wrong.add(refusal(invalid));
            return new Wording.Said("{{" + live.figure().figure() + " …}}");
        }
    }

    /** A remedy that asks ends in its own sign. */
    private String refusal(Invalid invalid) {
        return fields.refusal(invalid, "").replace("?.", "?");
    }
}
