package groupwright.workbench.shell;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.BandPart;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Definition;
import java.util.List;

/** A view that refuses whoever asks it from another thread than its own, above all the event thread. */
final class OwnedView implements View {
    private final View view;
    private final Thread owner = Thread.currentThread();

    OwnedView(View view) {
        this.view = view;
    }

    private View own() {
        if (Thread.currentThread() != owner) {
            throw new IllegalStateException("the ledger was asked from the thread "
                    + Thread.currentThread().getName() + "; ask it in a sheet or through the bench");
        }
        return view;
    }

    @Override
    public Definition definition() {
        return own().definition();
    }

    @Override
    public Catalogue catalogue() {
        return own().catalogue();
    }

    @Override
    public Answer ask(Ask ask) {
        return own().ask(ask);
    }

    @Override
    public Band band(Ask ask) {
        return own().band(ask);
    }

    @Override
    public List<BandPart> bandParts(Ask ask) {
        return own().bandParts(ask);
    }

    @Override
    public Workings explain(Ask ask) {
        return own().explain(ask);
    }

    @Override
    public List<Workings.FieldInput> trace(Ask ask) {
        return own().trace(ask);
    }

    @Override
    public View fork(Definition other) {
        return new OwnedView(own().fork(other));
    }
}
