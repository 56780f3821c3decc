package groupwright.workbench.shell;

import groupwright.workbench.look.Words;
import javax.swing.JOptionPane;

/** Asked where something is only in memory and the window is to be closed. */
final class LeaveQuestion {
    private final MainWindow window;
    private final Words words;

    LeaveQuestion(MainWindow window, Words words) {
        this.window = window;
        this.words = words;
    }

    /** Whether the user leaves it unsaved; saving elsewhere keeps the window open. */
    boolean isLeaving() {
        Object[] ways = {words.text("leave.save"), words.text("leave.lose"), words.text("leave.stay")};
        int chosen = JOptionPane.showOptionDialog(
                window,
                words.text("leave.question"),
                words.text("program"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                ways,
                ways[0]);
        if (chosen == 0) {
            window.saveElsewhere();
        }
        return chosen == 1;
    }
}
