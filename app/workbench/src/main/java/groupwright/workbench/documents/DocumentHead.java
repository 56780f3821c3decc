package groupwright.workbench.documents;

import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;

/** The bar over a document: its title and the section in sight, template or page, and where one is in it. */
final class DocumentHead extends JPanel {
    /** What is shown below. */
    enum Side {
        TEMPLATE,
        PAGE
    }

    private final transient Words words;
    private final transient Consumer<Side> turned;
    private final Title title = new Title();
    private final JToggleButton template;
    private final JToggleButton page;
    private final Prose calculating;
    private final ActionLink next;
    private final Prose count;

    /**
     * @param turned told the side that was chosen
     * @param nextChange goes to the next number that changed
     */
    DocumentHead(Words words, Consumer<Side> turned, Runnable nextChange) {
        super(new GridBagLayout());
        this.words = words;
        this.turned = turned;
        this.template = side(Side.TEMPLATE);
        this.page = side(Side.PAGE);
        this.calculating = line(words.text("calculating"), Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        this.next = new ActionLink(words.text("nextChange"), nextChange);
        this.count = line("", Type.BODY, Weight.STRONG, Token.INK);
        next.setName("documents.nextChange");
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        ButtonGroup sides = new ButtonGroup();
        sides.add(template);
        sides.add(page);
        page.setSelected(true);
        JPanel ends = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        ((FlowLayout) ends.getLayout()).setAlignOnBaseline(true);
        ends.setOpaque(false);
        ends.add(calculating);
        ends.add(template);
        ends.add(page);
        ends.add(next);
        ends.add(count);
        GridBagConstraints wide = new GridBagConstraints();
        wide.weightx = 1;
        wide.weighty = 1;
        wide.fill = GridBagConstraints.BOTH;
        add(title, wide);
        GridBagConstraints end = new GridBagConstraints();
        end.insets = new Insets(0, Metric.GAP.px(), 0, 0);
        add(ends, end);
        calculating.setVisible(false);
        next.setVisible(false);
        count.setVisible(false);
    }

    private JToggleButton side(Side side) {
        JToggleButton button = new JToggleButton(words.text("side." + side));
        button.setName("documents.side." + side);
        button.putClientProperty("JButton.buttonType", "tab");
        button.addActionListener(event -> turned.accept(side));
        button.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "turn");
        button.getActionMap().put("turn", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                button.doClick();
            }
        });
        return button;
    }

    private static Prose line(String text, Type type, Weight weight, Token colour) {
        Prose line = new Prose(text, type, weight, colour);
        line.setLineWrap(false);
        return line;
    }

    void turn(Side side) {
        (side == Side.PAGE ? page : template).setSelected(true);
    }

    void calculating(boolean now) {
        calculating.setVisible(now);
    }

    /**
     * Says what is in sight.
     *
     * @param section empty where there is none
     * @param place the page of how many; empty where no page is shown
     * @param changes how many numbers are marked
     */
    void show(String document, String section, String place, int changes) {
        title.show(document, section);
        if (!count.getText().equals(place)) {
            count.setText(place);
            count.setSize(1 + (int) Math.ceil(Look.scale() * Type.BODY.width(place, Weight.STRONG)), 1);
            count.getAccessibleContext().setAccessibleName(place);
        }
        count.setVisible(!place.isEmpty());
        next.setVisible(changes > 0 && !place.isEmpty());
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(1, Metric.TOP_BAR.px() - Metric.STEP.px());
    }

    /** Title and section, cut where the room is short. */
    private static final class Title extends JComponent implements Accessible {
        private String document = "";
        private String section = "";

        void show(String title, String heading) {
            document = title;
            section = heading;
            setToolTipText(heading.isEmpty() ? null : title + "  " + heading);
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(1, Metric.FIELD.px());
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
                double baseline = Type.BODY.baseline(drawing.height() / 2);
                String shown = Type.BODY.cut(document, Weight.STRONG, drawing.width());
                drawing.text(shown, 0, baseline, Type.BODY, Weight.STRONG, Token.INK);
                double x = Type.BODY.width(shown, Weight.STRONG) + Metric.STEP.units();
                double room = drawing.width() - x;
                if (room > Metric.WIDE_GAP.units()) {
                    String cut = Type.BODY.cut(section, Weight.REGULAR, room);
                    drawing.text(cut, x, baseline, Type.BODY, Weight.REGULAR, Token.MUTED);
                }
            }
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJComponent() {
                    @Override
                    public AccessibleRole getAccessibleRole() {
                        return AccessibleRole.LABEL;
                    }

                    @Override
                    public String getAccessibleName() {
                        return section.isEmpty() ? document : document + ", " + section;
                    }
                };
            }
            return accessibleContext;
        }
    }
}
