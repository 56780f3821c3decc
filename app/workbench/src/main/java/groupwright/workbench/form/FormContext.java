package groupwright.workbench.form;

import groupwright.definition.figure.Catalogue;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notations;

/** What all parts of a form work with. */
record FormContext(Notations notations, Editors editors, Words words, Arrangement arrangement) {
    static FormContext of(Bench bench, Catalogue catalogue, Arrangement arrangement) {
        Notations notations = new Notations(bench.locale(), bench::definition, catalogue);
        Words words = Words.of(FormContext.class, bench.locale());
        return new FormContext(notations, new Editors(notations, words), words, arrangement);
    }

    /** For an object that is no record: all its fields can be edited. */
    FormContext ofObject() {
        return new FormContext(notations, editors, words, new Arrangement(java.util.Set.of(), java.util.Set.of()));
    }

    FieldWords fieldWords() {
        return notations.words();
    }

    String currency() {
        return notations.definition().project().currency();
    }
}
