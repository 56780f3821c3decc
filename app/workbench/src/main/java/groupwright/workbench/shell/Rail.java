package groupwright.workbench.shell;

import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.bench.Stage;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Box;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** The places under their stages. Arrow keys walk, Enter goes; a place that an edit touched is marked until it is visited. */
final class Rail extends JPanel {

    private final transient Words words;
    private final transient Consumer<PlaceName> go;
    private final transient Map<PlaceName, RailRow> rows = new LinkedHashMap<>();
    private final Box column = Box.createVerticalBox();
    private final RailLadder ladder;
    private final transient Set<PlaceName> changed = EnumSet.noneOf(PlaceName.class);
    private transient RailSheet sheet = new RailSheet(Map.of(), Optional.empty());
    private transient Optional<PlaceName> here = Optional.empty();

    Rail(Words words, Consumer<PlaceName> go) {
        super(new BorderLayout());
        this.words = words;
        this.go = go;
        this.ladder = new RailLadder(words);
        setName("rail");
        add(column, BorderLayout.NORTH);
        add(ladder, BorderLayout.SOUTH);
        getAccessibleContext().setAccessibleName(words.text("rail"));
        key("DOWN", () -> step(1));
        key("UP", () -> step(-1));
        key("ENTER", () -> focused().ifPresent(RailRow::choose));
        key("SPACE", () -> focused().ifPresent(RailRow::choose));
    }

    private void key(String stroke, Runnable action) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /** Shows counts and places. */
    void show(RailSheet shown) {
        if (!shown.open().keySet().equals(rows.keySet())) {
            rebuild(shown);
        }
        sheet = shown;
        refresh();
    }

    private void rebuild(RailSheet shown) {
        rows.clear();
        column.removeAll();
        boolean first = true;
        for (Stage stage : Stage.values()) {
            List<PlaceName> places = shown.places(stage);
            if (!places.isEmpty()) {
                column.add(new RailGap(words.text("stage." + stage), first));
                first = false;
            }
            for (int i = 0; i < places.size(); i++) {
                PlaceName place = places.get(i);
                RailRow row = new RailRow(place, words, position(i, places.size()), () -> go.accept(place));
                rows.put(place, row);
                column.add(row);
            }
        }
        column.revalidate();
    }

    private static RailRow.Position position(int index, int of) {
        if (of == 1) {
            return RailRow.Position.ONLY;
        } else if (index == 0) {
            return RailRow.Position.FIRST;
        }
        return index == of - 1 ? RailRow.Position.LAST : RailRow.Position.INNER;
    }

    /** Marks where one is; that place counts as visited. */
    void stand(PlaceName place) {
        here = Optional.of(place);
        changed.remove(place);
        refresh();
    }

    /** Marks places that a step touched. */
    void touched(Set<PlaceName> places) {
        changed.addAll(places);
        here.ifPresent(changed::remove);
        refresh();
    }

    /** The places of a stage that can be visited. */
    List<PlaceName> places(Stage stage) {
        return sheet.places(stage);
    }

    /** Puts the focus on the present place. */
    void enter() {
        here.map(rows::get).ifPresent(RailRow::requestFocusInWindow);
    }

    private void refresh() {
        boolean narrow = isWindowBelow(Metric.NARROW_WIDTH, false);
        rows.forEach((place, row) -> row.show(
                sheet.open().getOrDefault(place, 0), here.equals(Optional.of(place)), changed.contains(place), narrow));
        ladder.show(sheet.ladder(), isWindowBelow(Metric.LOW_HEIGHT, true));
    }

    private boolean isWindowBelow(Metric limit, boolean height) {
        Window window = SwingUtilities.getWindowAncestor(this);
        if (window == null) {
            return false;
        }
        return (height ? window.getHeight() : window.getWidth()) < limit.px();
    }

    /** The window has another size. */
    void resized() {
        refresh();
    }

    private void step(int by) {
        List<RailRow> all = new ArrayList<>(rows.values());
        int at = focused().map(all::indexOf).orElse(-1);
        if (at >= 0) {
            all.get(Math.floorMod(at + by, all.size())).requestFocusInWindow();
        }
    }

    private Optional<RailRow> focused() {
        return rows.values().stream().filter(RailRow::isFocusOwner).findFirst();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Metric.RAIL.px(), super.getPreferredSize().height);
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.GROUND.colour();
    }
}
