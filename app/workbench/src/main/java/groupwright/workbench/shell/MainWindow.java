package groupwright.workbench.shell;

import groupwright.definition.problem.Problem;
import groupwright.definition.session.Saving;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Step;
import groupwright.workbench.documents.DocumentsKeeping;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import groupwright.workbench.start.DocumentChoices;
import groupwright.workbench.start.Preferences;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.Timer;

/** The window of the program: one project at a time, its menu, and what happens when it is closed. */
final class MainWindow extends JFrame {
    private static final int LOOK_OUTSIDE_MS = 2000;
    private static final int FIRST_WIDTH = 1440;
    private static final int FIRST_HEIGHT = 900;
    private static final int LEAST_WIDTH = 800;
    private static final int LEAST_HEIGHT = 560;

    private final transient Runnable closed;
    private final transient Keeper keeper;
    private final transient Timer outside;
    private transient Surrounding surrounding;
    private transient Words words;
    private transient Optional<Shell> shell = Optional.empty();

    MainWindow(Surrounding surrounding, Runnable closed) {
        this.surrounding = surrounding;
        this.closed = closed;
        this.words = Words.of(MainWindow.class, surrounding.locale());
        this.keeper = new Keeper(surrounding.data());
        this.outside = new Timer(
                LOOK_OUTSIDE_MS, event -> shell.ifPresent(open -> open.desk().lookOutside()));
        setName("window");
        setTitle(words.text("program"));
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                leave();
            }

            @Override
            public void windowActivated(WindowEvent event) {
                shell.ifPresent(open -> open.desk().lookOutside());
            }
        });
        setMinimumSize(new Dimension(Look.pixels(LEAST_WIDTH), Look.pixels(LEAST_HEIGHT)));
        setJMenuBar(new Menu(this, words).bar());
    }

    /** Shows itself, and the project when it has been opened. */
    void start(CompletableFuture<Opener.Told> opening) {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        setSize(Math.min(Look.pixels(FIRST_WIDTH), screen.width), Math.min(Look.pixels(FIRST_HEIGHT), screen.height));
        setLocationRelativeTo(null);
        say(words.text("opening"));
        setVisible(true);
        show(opening);
        outside.start();
    }

    private void show(CompletableFuture<Opener.Told> opening) {
        opening.thenAccept(told -> EventQueue.invokeLater(() -> told.to(this)));
    }

    private void say(String what) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setBackground(Token.SURFACE.colour());
        panel.setBorder(BorderFactory.createEmptyBorder(
                Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px()));
        panel.add(new EmptyPlace(what, "", Optional.empty(), Optional.empty()));
        put(panel);
    }

    private void put(JPanel content) {
        getContentPane().removeAll();
        getContentPane().add(content);
        getContentPane().revalidate();
        getContentPane().repaint();
    }

    Surrounding surrounding() {
        return surrounding;
    }

    Optional<Shell> shell() {
        return shell;
    }

    /** A project was opened; the one before is closed. */
    void opened(Opener.Opened opened) {
        shell.ifPresent(old -> old.desk().close(old::end));
        Shell next = new Shell(opened.thread(), opened.project(), surrounding.locale(), new Hosting());
        shell = Optional.of(next);
        put(next.content());
        prefer(surrounding.preferences().of(opened.project().standing().folder()));
    }

    /** A project could not be opened; the one before stays. */
    void notOpened(Path folder, Problem problem) {
        if (shell.isPresent()) {
            shell.get().tell(problem);
            return;
        }
        JPanel panel = new JPanel(new BorderLayout());
        panel.setBackground(Token.SURFACE.colour());
        panel.setBorder(BorderFactory.createEmptyBorder(
                Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px()));
        panel.add(new EmptyPlace(
                words.text("notOpened", folder.toString()),
                problem.sentence(),
                Optional.of(new Step(words.text("menu.open"), this::chooseProject)),
                Optional.of(new Step(words.text("menu.sample"), this::openSample))));
        panel.setName("notOpened");
        put(panel);
    }

    private final class Hosting implements Shell.Host {
        @Override
        public void saveElsewhere() {
            MainWindow.this.saveElsewhere();
        }

        @Override
        public DocumentsKeeping documents() {
            return new KeepingDocuments();
        }

        @Override
        public void titled(String title) {
            setTitle(title);
        }
    }

    private final class KeepingDocuments implements DocumentsKeeping {
        @Override
        public Path folder() {
            return surrounding.data().documents();
        }

        @Override
        public DocumentChoices choices() {
            return surrounding.preferences().documents();
        }

        @Override
        public void choose(DocumentChoices choices) {
            prefer(surrounding.preferences().with(choices));
        }
    }

    // What the menu does

    void newProject() {
        new NewProjectDialog(this, words).ask().ifPresent(wanted -> show(Opener.startNew(wanted)));
    }

    void chooseProject() {
        Folders.choose(this, words.text("open.title"), words.text("open.button"))
                .ifPresent(folder -> show(Opener.open(folder)));
    }

    void openSample() {
        show(Opener.openSample(surrounding));
    }

    void freshSample() {
        shell.ifPresentOrElse(
                open -> open.desk().close(() -> {
                    open.end();
                    shell = Optional.empty();
                    show(Opener.freshSample(surrounding));
                }),
                () -> show(Opener.freshSample(surrounding)));
    }

    void saveElsewhere() {
        shell.ifPresent(open -> Folders.choose(this, words.text("save.title"), words.text("save.button"))
                .ifPresent(folder -> open.desk().saveElsewhere(folder)));
    }

    void theme(Theme theme) {
        prefer(surrounding.preferences().with(theme == Theme.DARK ? Preferences.Dark.YES : Preferences.Dark.NO));
        look();
    }

    void scale(int pct) {
        prefer(surrounding.preferences().scaled(pct));
        look();
    }

    private void look() {
        Preferences chosen = surrounding.preferences();
        Look.setUp(chosen.dark() == Preferences.Dark.YES ? Theme.DARK : Theme.LIGHT, chosen.scalePct() / 100.0);
        reopen(); // parts keep lengths of the scale they were made at
    }

    /** Shows numbers and words in another language. */
    void language(String tag) {
        prefer(surrounding.preferences().in(tag));
        surrounding = surrounding.in(tag);
        words = Words.of(MainWindow.class, surrounding.locale());
        setJMenuBar(new Menu(this, words).bar());
        reopen();
    }

    /** Makes the window anew around the same open project: where one is, and what can be undone, stays. */
    private void reopen() {
        shell.ifPresent(old -> old.desk().handOver(opened -> {
            old.handedOver();
            shell = Optional.empty();
            opened(opened);
            shell.ifPresent(next -> next.goOnLike(old));
        }));
    }

    private void prefer(Preferences preferences) {
        surrounding = surrounding.with(preferences);
        keeper.keep(preferences);
    }

    /** Closes the window; asks first where something is only in memory. */
    void leave() {
        boolean unsaved = shell.filter(open -> open.standing().saving() instanceof Saving.Unsaved)
                .isPresent();
        if (unsaved && !new LeaveQuestion(this, words).isLeaving()) {
            return;
        }
        outside.stop();
        shell.ifPresentOrElse(
                open -> open.desk().close(() -> {
                    open.end();
                    gone();
                }),
                this::gone);
    }

    private void gone() {
        keeper.end();
        dispose();
        closed.run();
    }
}
