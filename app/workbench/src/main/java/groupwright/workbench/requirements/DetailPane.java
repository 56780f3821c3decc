package groupwright.workbench.requirements;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Prose;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.NewRecordForm;
import groupwright.workbench.form.RecordActions;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;

/** The pane below the table: a requirement to read, to edit, to make measurable, or a new one. */
final class DetailPane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Catalogue catalogue;
    private final transient Words words;
    private final transient Consumer<RecordId> added;
    private final RecordActions actions;
    private final RecordForm form;
    private transient Optional<NewRecordForm> draft = Optional.empty();
    private transient Optional<ChooseFigure> chooser = Optional.empty();
    private transient Optional<Detail> detail = Optional.empty();
    private transient Mode mode = Mode.READ;

    /** What the pane is for at the moment. */
    enum Mode {
        READ,
        EDIT,
        ADD,
        CHOOSE
    }

    /** @param added told which requirement came of the draft */
    DetailPane(Bench bench, Catalogue catalogue, Words words, Consumer<RecordId> added) {
        super(new BorderLayout());
        this.bench = bench;
        this.catalogue = catalogue;
        this.words = words;
        this.added = added;
        this.actions = new RecordActions(bench);
        this.form = new RecordForm(bench, catalogue, Arrangement.usual());
        setOpaque(false);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "read");
        getActionMap().put("read", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                if (mode == Mode.EDIT || mode == Mode.CHOOSE) {
                    read();
                }
            }
        });
        build();
    }

    Mode mode() {
        return mode;
    }

    /** After each step: forms show what is there now, and close where what they asked for is done. */
    void refresh() {
        actions.refresh();
        form.refresh();
        draft.ifPresent(NewRecordForm::refresh);
    }

    /** Shows a requirement. What is being typed elsewhere stays until it is added or given up. */
    void show(Optional<Detail> next) {
        boolean other = !next.map(Detail::id).equals(detail.map(Detail::id));
        boolean same = next.equals(detail);
        detail = next;
        next.ifPresent(one -> actions.show(one.id()));
        if (mode == Mode.CHOOSE && (other || isMeasurable(next))) {
            mode = Mode.READ;
            build();
        } else if (mode == Mode.EDIT && other) {
            next.ifPresent(one -> form.show(one.id()));
            build();
        } else if (mode == Mode.READ && !same) {
            build();
        }
    }

    private boolean isMeasurable(Optional<Detail> next) {
        return next.flatMap(one -> bench.definition().get(one.id(), groupwright.definition.record.Requirement.class))
                .filter(requirement -> !requirement.criteria().isEmpty())
                .isPresent();
    }

    /** Back to reading. */
    void read() {
        mode = Mode.READ;
        chooser = Optional.empty();
        build();
    }

    /** Opens the form of the requirement shown. */
    void edit() {
        detail.ifPresent(one -> edit(Address.of(one.id())));
    }

    /** Opens the form with a field in focus. */
    void edit(Address address) {
        mode = Mode.EDIT;
        form.show(address.record());
        build();
        validate();
        if (!address.path().isEmpty()) {
            form.reveal(address);
        }
    }

    /** Opens the choice of a figure for the requirement shown. */
    void choose() {
        detail.ifPresent(one -> {
            mode = Mode.CHOOSE;
            ChooseFigure next = new ChooseFigure(bench, catalogue, one.id(), one.statement(), words, this::read);
            chooser = Optional.of(next);
            build();
            next.focusFirst();
        });
    }

    /** Opens the form of a new requirement; a draft begun before is still there. */
    void add() {
        mode = Mode.ADD;
        if (draft.isEmpty()) {
            draft = Optional.of(new NewRecordForm(
                    bench, catalogue, RecordKinds.REQUIREMENT, Map.of(), this::isAdded, this::discard));
        }
        build();
        draft.get().focusFirst();
    }

    private void isAdded(RecordId id) {
        discard();
        added.accept(id);
    }

    private void discard() {
        draft = Optional.empty();
        read();
    }

    Optional<ChooseFigure> chooser() {
        return chooser;
    }

    Optional<NewRecordForm> draft() {
        return draft;
    }

    RecordForm form() {
        return form;
    }

    private void build() {
        removeAll();
        add(
                new ScrolledUp(
                        switch (mode) {
                            case READ -> reading();
                            case EDIT -> editing();
                            case ADD ->
                                draft.<JComponent>map(one -> padded(titled(words.text("add"), one)))
                                        .orElseGet(this::reading);
                            case CHOOSE -> chooser.<JComponent>map(one -> one).orElseGet(this::reading);
                        }),
                BorderLayout.CENTER);
        revalidate();
        repaint();
    }

    private JComponent reading() {
        if (detail.isEmpty()) {
            return padded(new Prose(words.text("hint.nothing"), Type.TABLE, Token.MUTED));
        }
        JPanel buttons = new JPanel(new OneOrTwoLines(OneOrTwoLines.Second.BEHIND_THE_FIRST, 0, 0));
        buttons.setOpaque(false);
        ActionButton edit = ActionButton.plain(words.text("edit"), this::edit);
        edit.getAccessibleContext()
                .setAccessibleName(words.text("edit.name", detail.get().id()));
        buttons.add(edit);
        buttons.add(actions);
        return new DetailView(detail.get(), words, this::open, buttons);
    }

    /** Fields of the requirement itself are edited here; everything else is elsewhere. */
    private void open(Address address) {
        if (detail.map(Detail::id).equals(Optional.of(address.record()))) {
            edit(address);
        } else {
            bench.open(address);
        }
    }

    private JComponent editing() {
        String title = detail.map(one -> words.text("edit.title", one.id(), one.title()))
                .orElseGet(() -> words.text("edit"));
        JPanel panel = titled(title, form);
        JPanel head = (JPanel) panel.getComponent(0);
        head.add(ActionButton.plain(words.text("edit.done"), this::read), BorderLayout.LINE_END);
        return padded(panel);
    }

    private static JPanel titled(String title, JComponent body) {
        JPanel panel = new JPanel(new BorderLayout(0, Metric.STEP.px()));
        panel.setOpaque(false);
        JPanel head = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
        head.setOpaque(false);
        head.add(new Prose(title, Type.HEADING, Weight.STRONG, Token.INK), BorderLayout.CENTER);
        panel.add(head, BorderLayout.NORTH);
        panel.add(body, BorderLayout.CENTER);
        return panel;
    }

    private static JComponent padded(JComponent component) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        panel.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        panel.add(component, BorderLayout.NORTH);
        return panel;
    }
}
