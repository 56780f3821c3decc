package groupwright.definition.storage;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What an {@link IOException} means to the user.
 *
 * @param wrong what happened
 * @param remedy what to do
 */
record DiskTrouble(String wrong, String remedy) {
    /** Java has no type for a full disk; these are the words of Linux, macOS and Windows. */
    private static final Pattern FULL = Pattern.compile("no space left|not enough space|quota exceeded");

    private static final Pattern READ_ONLY =
            Pattern.compile("read-only file system|permission denied|access is denied");

    /** @param root the project folder, named where the exception names no file */
    static DiskTrouble of(IOException e, Path root) {
        String detail = detail(e).toLowerCase(Locale.ROOT);
        if (FULL.matcher(detail).find()) {
            return new DiskTrouble("the disk is full", "free some space and try again");
        }
        if (e instanceof AccessDeniedException || READ_ONLY.matcher(detail).find()) {
            return new DiskTrouble(folder(e, root) + " cannot be written to", "make it writable or copy the project");
        }
        if (e instanceof NoSuchFileException || e instanceof NotDirectoryException) {
            return new DiskTrouble(folder(e, root) + " is gone", "bring the folder back and try again");
        }
        if (e instanceof ClosedByInterruptException || e instanceof InterruptedIOException) {
            return new DiskTrouble("saving was interrupted", "try again");
        }
        return new DiskTrouble("the disk reports: " + detail(e), "look at the disk and try again");
    }

    /** The reason without the path, which the sentence around it names. */
    static String detail(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        Optional<String> reason = Optional.ofNullable(
                e instanceof FileSystemException fileSystem ? fileSystem.getReason() : e.getMessage());
        return reason.orElse(e.getClass().getSimpleName());
    }

    private static String folder(IOException e, Path root) {
        Optional<Path> file = e instanceof FileSystemException fileSystem
                ? Optional.ofNullable(fileSystem.getFile()).map(Path::of)
                : Optional.empty();
        return "the folder "
                + file.flatMap(path -> Optional.ofNullable(path.getParent())).orElse(root);
    }

    /** One sentence saying that an edit came to nothing. */
    String nothingSaved() {
        return "Nothing was saved because " + wrong + "; " + remedy + "; the files are as before.";
    }
}
