package groupwright.workbench.components;

import groupwright.workbench.look.Metric;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Objects;
import java.util.function.IntConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.border.Border;

/** Words with counts over a list; the active one is underlined. Left and Right, Home and End go from one to the next. */
public final class Facets extends JPanel {
    private transient List<Facet> facets = List.of();
    private int active;
    private final transient IntConsumer chosen;

    /**
     * Facets.
     *
     * @param chosen is told which one, from 0, when another is chosen
     */
    public Facets(List<Facet> facets, int active, IntConsumer chosen) {
        super(new FlowLayout(FlowLayout.LEADING, 0, 0));
        this.chosen = Objects.requireNonNull(chosen, "chosen");
        setOpaque(false);
        show(facets, active);
    }

    /** Shows other words or counts. */
    public void show(List<Facet> next, int nextActive) {
        Objects.checkIndex(nextActive, next.size());
        boolean sameWords = facets.size() == next.size();
        facets = List.copyOf(next);
        active = nextActive;
        if (!sameWords) {
            removeAll();
            for (int i = 0; i < facets.size(); i++) {
                add(tab(i));
            }
        }
        for (int i = 0; i < facets.size(); i++) {
            FacetTab tab = at(i);
            tab.show(new FacetTab.Shown(facets.get(i), standing(i), getLocale()));
            tab.setFocusable(i == active); // one stop for Tab, arrow keys within
        }
        revalidate();
        repaint();
    }

    /** Which one is active, from 0. */
    public int active() {
        return active;
    }

    /** Makes one active, as a click on it does. */
    public void choose(int index) {
        if (index == active) {
            return;
        }
        boolean focused = at(active).isFocusOwner();
        show(facets, index);
        if (focused) {
            at(active).requestFocusInWindow();
        }
        chosen.accept(index);
    }

    private FacetTab.Standing standing(int index) {
        return index == active ? FacetTab.Standing.ACTIVE : FacetTab.Standing.OTHER;
    }

    private FacetTab at(int index) {
        return (FacetTab) getComponent(index);
    }

    private FacetTab tab(int index) {
        FacetTab tab =
                new FacetTab(new FacetTab.Shown(facets.get(index), standing(index), getLocale()), () -> choose(index));
        Border apart = BorderFactory.createEmptyBorder(0, 0, 0, Metric.GAP.px());
        tab.setBorder(BorderFactory.createCompoundBorder(apart, tab.getBorder()));
        Press.bind(tab, "LEFT", "left", () -> choose(Math.max(0, active - 1)));
        Press.bind(tab, "RIGHT", "right", () -> choose(Math.min(facets.size() - 1, active + 1)));
        Press.bind(tab, "HOME", "first", () -> choose(0));
        Press.bind(tab, "END", "last", () -> choose(facets.size() - 1));
        return tab;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PAGE_TAB_LIST;
                }
            };
        }
        return accessibleContext;
    }
}
