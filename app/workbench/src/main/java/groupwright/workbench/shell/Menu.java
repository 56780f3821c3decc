package groupwright.workbench.shell;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Words;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;

/** The menu of the window. */
final class Menu {
    private static final List<Integer> SCALES = List.of(100, 125, 150, 175, 200);
    private static final List<String> LANGUAGES = List.of("", "en", "de");

    private final MainWindow window;
    private final Words words;

    Menu(MainWindow window, Words words) {
        this.window = window;
        this.words = words;
    }

    JMenuBar bar() {
        JMenuBar bar = new JMenuBar();
        bar.add(project());
        bar.add(edit());
        bar.add(view());
        return bar;
    }

    private JMenu project() {
        JMenu menu = menu("menu.project");
        menu.add(item("menu.new", window::newProject));
        menu.add(item("menu.open", window::chooseProject));
        menu.addSeparator();
        menu.add(item("menu.sample", window::openSample));
        menu.add(item("menu.freshSample", window::freshSample));
        menu.addSeparator();
        menu.add(item(
                "menu.settings",
                () -> window.shell().ifPresent(shell -> shell.openSettings(Address.of(RecordId.PROJECT)))));
        menu.add(item("menu.saveElsewhere", window::saveElsewhere));
        menu.add(item("menu.leave", window::leave));
        return menu;
    }

    private JMenu edit() {
        JMenu menu = menu("menu.edit");
        menu.add(item("menu.undo", () -> window.shell().ifPresent(Shell::undo)));
        menu.add(item("menu.redo", () -> window.shell().ifPresent(Shell::redo)));
        menu.addSeparator();
        menu.add(item(
                "menu.find",
                () -> window.shell().ifPresent(shell -> shell.find().requestFocusInWindow())));
        return menu;
    }

    private JMenu view() {
        JMenu menu = menu("menu.view");
        ButtonGroup themes = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            menu.add(choice("menu.theme." + theme, Look.theme() == theme, themes, () -> window.theme(theme)));
        }
        menu.addSeparator();
        ButtonGroup scales = new ButtonGroup();
        for (int pct : SCALES) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(words.text("menu.scale", Integer.toString(pct)));
            item.setName("menu.scale." + pct);
            item.setSelected(window.surrounding().preferences().scalePct() == pct);
            item.addActionListener(event -> window.scale(pct));
            scales.add(item);
            menu.add(item);
        }
        menu.addSeparator();
        ButtonGroup languages = new ButtonGroup();
        for (String tag : LANGUAGES) {
            menu.add(choice(
                    "menu.language" + (tag.isEmpty() ? "" : "." + tag),
                    window.surrounding().preferences().language().equals(tag),
                    languages,
                    () -> window.language(tag)));
        }
        menu.addSeparator();
        menu.add(item(
                "menu.workings",
                () -> window.shell().ifPresent(shell -> shell.content().toggleWorkings())));
        return menu;
    }

    private JMenu menu(String key) {
        JMenu menu = new JMenu(words.text(key));
        menu.setName(key);
        return menu;
    }

    private JMenuItem item(String key, Runnable action) {
        JMenuItem item = new JMenuItem(words.text(key));
        item.setName(key);
        item.addActionListener(event -> action.run());
        return item;
    }

    private JMenuItem choice(String key, boolean chosen, ButtonGroup group, Runnable action) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(words.text(key));
        item.setName(key);
        item.setSelected(chosen);
        item.addActionListener(event -> action.run());
        group.add(item);
        return item;
    }
}
