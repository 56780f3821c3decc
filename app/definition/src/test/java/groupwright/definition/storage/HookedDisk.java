package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;

/** Lets a test do something, or fail, before each writing operation. */
final class HookedDisk extends PassingDisk {
    /** An operation about to be done. */
    record Operation(int index, String name, Path path) {}

    interface Hook {
        void before(Operation operation) throws IOException;
    }

    private Hook hook = operation -> {};
    private int operations;

    /** Counting begins anew. */
    void hook(Hook next) {
        hook = next;
        operations = 0;
    }

    int operations() {
        return operations;
    }

    private void before(String name, Path path) throws IOException {
        hook.before(new Operation(operations++, name, path));
    }

    @Override
    public void createDirectory(Path folder) throws IOException {
        before("createDirectory", folder);
        super.createDirectory(folder);
    }

    /** A disk that fills up has taken half of the file. */
    @Override
    public void createFile(Path file, Content content) throws IOException {
        try {
            before("createFile", file);
        } catch (IOException e) {
            String text = content.text();
            super.createFile(file, Content.ofText(text.substring(0, text.length() / 2)));
            throw e;
        }
        super.createFile(file, content);
    }

    @Override
    public void force(Path file) throws IOException {
        before("force", file);
        super.force(file);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        before("replace", to);
        super.replace(from, to);
    }

    @Override
    public void moveToNew(Path from, Path to) throws IOException {
        before("moveToNew", to);
        super.moveToNew(from, to);
    }

    @Override
    public void forceDirectory(Path folder) throws IOException {
        before("forceDirectory", folder);
        super.forceDirectory(folder);
    }

    @Override
    public void delete(Path path) throws IOException {
        before("delete", path);
        super.delete(path);
    }
}
