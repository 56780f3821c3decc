package groupwright.workbench.cassettes;

import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.lists.Line;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;

/** The title of the scatter: both nouns are links that change the axes. */
final class AxisTitle extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient CassetteWords say;
    private final transient Consumer<TradeOff> chosen;
    private final LinkLabel up;
    private final LinkLabel across;
    private transient TradeOff axes = new TradeOff(Measure.WEIGHT, Measure.UNEVENNESS);

    AxisTitle(CassetteWords say, Consumer<TradeOff> chosen) {
        super(new BorderLayout());
        this.say = say;
        this.chosen = chosen;
        setOpaque(false);
        up = new LinkLabel("", Type.BODY, this::chooseUp);
        across = new LinkLabel("", Type.BODY, this::chooseAcross);
        JLabel against = new JLabel(say.words().text("scatter.against"));
        against.setFont(Type.BODY.font(Weight.STRONG));
        add(new Line(Metric.HALF_STEP.units(), up, against, across));
        up.setName("axis up");
        across.setName("axis across");
        show(axes);
    }

    private void chooseUp() {
        menu(axes.up(), axes::up).show(up, 0, up.getHeight());
    }

    private void chooseAcross() {
        menu(axes.across(), axes::across).show(across, 0, across.getHeight());
    }

    private JPopupMenu menu(Measure now, Function<Measure, TradeOff> then) {
        JPopupMenu menu = new JPopupMenu();
        ButtonGroup group = new ButtonGroup();
        for (Measure measure : Measure.values()) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(say.name(measure), measure == now);
            item.addActionListener(event -> chosen.accept(then.apply(measure)));
            group.add(item);
            menu.add(item);
        }
        return menu;
    }

    void show(TradeOff next) {
        axes = next;
        String above = say.name(next.up());
        up.show(Character.toUpperCase(above.charAt(0)) + above.substring(1));
        across.show(say.name(next.across()));
    }
}
