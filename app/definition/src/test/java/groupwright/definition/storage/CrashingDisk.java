package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;

/** Stops the machine once a number of writing operations is done, and keeps account of what was forced by then. */
final class CrashingDisk extends PassingDisk {
    /** The machine stops: nothing catches it. */
    static final class Crash extends Error {
        private static final long serialVersionUID = 1;

        Crash() {
            super("the machine stopped", null, false, false);
        }
    }

    private final DurableModel model;
    private final int operationsUntilCrash;
    private int operations;

    /** @param base a folder whose content is safe from power cuts at the start */
    CrashingDisk(Path base, int operationsUntilCrash) throws IOException {
        this.model = DurableModel.of(base);
        this.operationsUntilCrash = operationsUntilCrash;
    }

    DurableModel model() {
        return model;
    }

    int operations() {
        return operations;
    }

    private interface Operation {
        void run() throws IOException;
    }

    private void step(Operation real, Runnable modelled) throws IOException {
        if (operations == operationsUntilCrash) {
            throw new Crash();
        }
        real.run();
        modelled.run();
        operations++;
    }

    @Override
    public void createDirectory(Path folder) throws IOException {
        step(() -> super.createDirectory(folder), () -> model.createDirectory(folder));
    }

    @Override
    public void createFile(Path file, Content content) throws IOException {
        step(() -> super.createFile(file, content), () -> model.createFile(file, content.bytes()));
    }

    @Override
    public void force(Path file) throws IOException {
        step(() -> super.force(file), () -> model.force(file));
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        step(() -> super.replace(from, to), () -> model.move(from, to));
    }

    @Override
    public void moveToNew(Path from, Path to) throws IOException {
        step(() -> super.moveToNew(from, to), () -> model.link(from, to));
    }

    @Override
    public void forceDirectory(Path folder) throws IOException {
        step(() -> super.forceDirectory(folder), () -> model.forceDirectory(folder));
    }

    @Override
    public void delete(Path path) throws IOException {
        step(() -> super.delete(path), () -> model.delete(path));
    }
}
