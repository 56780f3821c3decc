package groupwright.workbench.form;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Criteria;
import java.awt.BorderLayout;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Chooses a figure that a criterion can hold: finds as one types, by name, id, unit and what it is about. */
public final class FigureChooser extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Catalogue catalogue;
    private final transient Consumer<Figure> chosen;
    private final transient Editor editor;
    private final JLabel about = new StyledLabel(" ", Type.SECONDARY, Weight.REGULAR, Token.MUTED);

    /**
     * @param chosen told each figure that was chosen
     */
    public FigureChooser(Catalogue catalogue, Locale locale, Consumer<Figure> chosen) {
        super(new BorderLayout(0, Metric.HALF_STEP.px()));
        this.catalogue = catalogue;
        this.chosen = chosen;
        this.editor = new FindEditor(typed -> Criteria.find(catalogue, typed), found -> found.title());
        String name = Words.of(FigureChooser.class, locale).text("figure.choose");
        editor.input().getAccessibleContext().setAccessibleName(name);
        editor.input().putClientProperty("JTextField.placeholderText", name);
        editor.tell(() -> about.setText(" "), this::choose);
        about.setBorder(BorderFactory.createEmptyBorder(0, Metric.STEP.px(), 0, 0));
        setOpaque(false);
        add(editor.component(), BorderLayout.CENTER);
        add(about, BorderLayout.SOUTH);
    }

    private void choose() {
        Criteria.figures(catalogue).stream()
                .filter(figure -> figure.name().equalsIgnoreCase(editor.text().strip()))
                .findFirst()
                .ifPresent(figure -> {
                    String unit = figure.unit().symbol();
                    about.setText(figure.id() + (unit.isEmpty() ? "" : ", " + unit));
                    editor.input().getAccessibleContext().setAccessibleDescription(about.getText());
                    chosen.accept(figure);
                });
    }

    Editor editor() {
        return editor;
    }
}
