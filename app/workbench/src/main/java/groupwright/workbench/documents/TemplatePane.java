package groupwright.workbench.documents;

import groupwright.documents.project.Obstacle;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Prose;
import groupwright.workbench.documents.TemplateSheet.Standing;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** A template: above it how it stands and what can be done, below it what is wrong with it. */
final class TemplatePane extends JPanel {
    /** What is done here; each about the template in sight. */
    interface Acts {
        /** The text reads so now. */
        void typed(String text);

        void save();

        /** Goes on with the text on disk. */
        void loadAgain();

        /** Saves what was typed over what is on disk. */
        void keepMine();

        /** Copies the program's template into the project. */
        void copy();

        /** Goes back to the program's template. */
        void putAway();
    }

    private final transient Words words;
    private final TemplateText text;
    private final LineNumbers lines;
    private final JPanel strip = new JPanel(new StackLayout(Metric.STEP.px()));
    private final JPanel below = new JPanel(new BorderLayout());
    private transient Optional<Acts> acts = Optional.empty();
    private transient Optional<TemplateSheet> sheet = Optional.empty();
    private String said = "";

    /** @param followed told the line, from 1, whose page is to be shown */
    TemplatePane(Words words, IntConsumer followed) {
        super(new BorderLayout());
        this.words = words;
        this.text = new TemplateText(
                typed -> acts.ifPresent(doing -> doing.typed(typed)),
                () -> acts.filter(doing -> isUnsaved()).ifPresent(Acts::save),
                followed);
        this.lines = new LineNumbers(text, words, followed);
        setOpaque(false);
        setName("documents.templatePane");
        JScrollPane scroll = new JScrollPane(
                text, ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setRowHeaderView(lines);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        strip.setOpaque(false);
        strip.setName("documents.strip");
        below.setOpaque(false);
        add(strip, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    void listen(Acts doing) {
        acts = Optional.of(doing);
    }

    private boolean isUnsaved() {
        return sheet.filter(now -> now.standing() == Standing.UNSAVED || now.standing() == Standing.CHANGED_ON_DISK)
                .isPresent();
    }

    TemplateText text() {
        return text;
    }

    /** Shows a template. */
    void show(TemplateSheet next) {
        boolean same = sheet.map(TemplateSheet::name).equals(Optional.of(next.name()));
        boolean asBefore = sheet.equals(Optional.of(next));
        if (!same) {
            said = "";
            text.open(next.text());
        } else if (!text.getText().equals(next.text())) {
            text.load(next.text());
        }
        Optional<Standing> before = sheet.map(TemplateSheet::standing).filter(any -> same);
        sheet = Optional.of(next);
        if (asBefore) {
            return;
        }
        text.setEditable(next.standing().isEditable());
        text.getAccessibleContext().setAccessibleName(words.text("template.of", next.name()));
        if (!before.equals(Optional.of(next.standing()))) {
            strip(next);
        }
        obstacles(next);
    }

    /** Says what was done to the template in sight. */
    void say(String sentence) {
        said = sentence;
    }

    /** Goes to a place in the text. */
    void goTo(Obstacle.Place place) {
        text.goTo(place.line(), place.column());
    }

    private void strip(TemplateSheet now) {
        boolean focused = java.util.Arrays.stream(strip.getComponents())
                .anyMatch(row -> row instanceof JPanel buttons
                        && java.util.Arrays.stream(buttons.getComponents()).anyMatch(java.awt.Component::isFocusOwner));
        strip.removeAll();
        strip.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        String file = "templates/" + now.name() + ".md";
        if (!said.isEmpty()) {
            strip.add(new Prose(said, Type.TABLE, Token.INK));
            said = "";
        }
        switch (now.standing()) {
            case PROGRAMS -> {
                sentence("template.programs", file);
                buttons(ActionButton.plain(words.text("copy"), doing(Acts::copy)), "documents.copy");
            }
            case COPY -> {
                sentence("template.copy", file);
                buttons(ActionButton.plain(words.text("back"), doing(Acts::putAway)), "documents.back");
            }
            case OWN -> sentence("template.own", file);
            case UNSAVED -> {
                sentence("template.unsaved", file);
                buttons(ActionButton.plain(words.text("save"), doing(Acts::save)), "documents.save");
            }
            case CHANGED_ON_DISK -> {
                sentence("template.conflict", file);
                JPanel row = buttons(
                        ActionButton.plain(words.text("loadAgain"), doing(Acts::loadAgain)), "documents.loadAgain");
                ActionButton mine = ActionButton.plain(words.text("keepMine"), doing(Acts::keepMine));
                mine.setName("documents.keepMine");
                row.add(mine);
            }
            default -> strip.add(new Prose(now.problem(), Type.TABLE, Token.INK));
        }
        strip.revalidate();
        strip.repaint();
        if (focused) { // the button that was pressed is gone
            text.requestFocusInWindow();
        }
    }

    private interface Doing {
        void with(Acts acts);
    }

    private Runnable doing(Doing what) {
        return () -> acts.ifPresent(what::with);
    }

    private void sentence(String key, String file) {
        strip.add(new Prose(words.text(key, file), Type.TABLE, Token.INK));
    }

    private JPanel buttons(ActionButton first, String name) {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        row.setOpaque(false);
        row.setBorder(BorderFactory.createEmptyBorder(0, -Metric.STEP.px(), 0, 0));
        first.setName(name);
        row.add(first);
        strip.add(row);
        return row;
    }

    private void obstacles(TemplateSheet now) {
        below.removeAll();
        lines.mark(now.obstacles().stream()
                .flatMap(obstacle -> obstacle.place().stream())
                .map(Obstacle.Place::line)
                .collect(Collectors.toSet()));
        if (!now.obstacles().isEmpty()) {
            JPanel inside = new JPanel(new StackLayout(Metric.HALF_STEP.px())) {
                @Override
                protected void paintComponent(Graphics graphics) {
                    try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
                        drawing.level(0, drawing.width(), 0, 1, Token.HAIRLINE);
                    }
                }
            };
            inside.setOpaque(false);
            inside.setBorder(BorderFactory.createEmptyBorder(
                    Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
            inside.add(
                    new Prose(words.text("refused"), Type.BODY, groupwright.workbench.look.Weight.STRONG, Token.INK));
            inside.add(new Obstacles(Obstacles.of(now.obstacles()), words, this::goTo));
            below.add(inside);
        }
        below.revalidate();
        below.repaint();
    }
}
