package groupwright.workbench.shell;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;

/** Asks for a folder. */
final class Folders {
    private Folders() {}

    static Optional<Path> choose(Component above, String title, String button) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(title);
        chooser.setApproveButtonText(button);
        return chooser.showDialog(above, button) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
