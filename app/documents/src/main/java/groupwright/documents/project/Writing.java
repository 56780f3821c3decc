package groupwright.documents.project;

import groupwright.documents.project.ProjectDocuments.Made;
import groupwright.documents.project.ProjectDocuments.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts finished documents into a folder; each file is replaced whole or not at all. */
final class Writing {
    private final Path out;

    Writing(Path out) {
        this.out = out;
    }

    Outcome write(List<Made> made, List<String> warnings) {
        List<Path> written = new ArrayList<>();
        try {
            Files.createDirectories(out);
            for (Made document : made) {
                for (Map.Entry<Format, byte[]> file : document.files().entrySet()) { // Markdown first, as declared
                    written.add(put(document.name() + file.getKey().ending(), file.getValue()));
                }
            }
            return new Outcome(written, List.of(), warnings);
        } catch (IOException refused) {
            String kept =
                    written.isEmpty() ? "nothing was written" : written.size() + " files are written, the rest are not";
            String sentence = out + ": cannot be written to (" + reason(refused) + "), " + kept
                    + "; name a folder you may write to with --out.";
            return new Outcome(written, List.of(sentence), warnings);
        }
    }

    private static String reason(IOException refused) {
        return refused.getMessage() == null ? refused.getClass().getSimpleName() : refused.getMessage();
    }

    private Path put(String name, byte[] bytes) throws IOException {
        Path target = out.resolve(name);
        Path temporary = out.resolve("." + name + ".part"); // beside the target, with the rights any new file gets
        try {
            Files.write(temporary, bytes);
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary); // gone already where the move succeeded
        }
        return target;
    }
}
