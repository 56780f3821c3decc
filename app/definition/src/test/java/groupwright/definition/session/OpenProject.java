package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.history.RecordDiff;
import groupwright.definition.interchange.RecordWriter;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.storage.FaultyDisk;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A project folder with a session on it, and another person who edits the same files with a plain editor. */
final class OpenProject implements AutoCloseable {
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    final Path folder;
    final FaultyDisk disk = new FaultyDisk();
    final Session session;

    private OpenProject(Path folder) {
        this.folder = folder;
        this.session = assertInstanceOf(SessionOpening.Opened.class, opening(folder, disk))
                .session();
    }

    static SessionOpening opening(Path folder, FaultyDisk disk) {
        Homes homes = new Homes(path -> disk.folder(path, ProjectFiles.recordFolders()));
        return Session.open(folder, CATALOGUE, homes);
    }

    static OpenProject at(Path folder) {
        return new OpenProject(folder);
    }

    /** A project of these records, in a new folder. */
    static OpenProject of(Path folder, Definition definition) {
        write(folder, definition);
        return at(folder);
    }

    static void write(Path folder, Definition definition) {
        for (RecordKind<?> kind : RecordKinds.all()) {
            definition.all(kind).forEach(record -> writeFile(folder, record));
        }
    }

    /** As an editor would write a file: in place, without lock. */
    static void writeFile(Path folder, Entry record) {
        write(file(folder, record.id().text()), new String(RecordWriter.write(record), StandardCharsets.UTF_8));
    }

    static Path file(Path folder, String id) {
        return folder.resolve(
                ProjectFiles.pathOf(Address.parse(id).orElseThrow().record()).text());
    }

    Path file(String id) {
        return file(folder, id);
    }

    static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The other person puts a value into a file. */
    void others(String address, Object value) {
        Definition said = read(folder);
        Address at = at(address);
        writeFile(folder, said.with(at, Optional.of(value)).get(at.record()).orElseThrow());
    }

    static Address at(String address) {
        return Address.parse(address).orElseThrow();
    }

    static Definition read(Path folder) {
        return ProjectFiles.read(folder).definition().orElseThrow();
    }

    Step set(String address, Object value) {
        return session.edit(Optional.empty(), project -> project.with(at(address), Optional.of(value)));
    }

    Object value(String address) {
        return session.definition().value(at(address)).orElse("nothing");
    }

    Object onDisk(String address) {
        return read(folder).value(at(address)).orElse("nothing");
    }

    static void assertSame(Definition expected, Definition actual, String message) {
        assertEquals(List.of(), RecordDiff.between(expected, actual), message);
    }

    /** What the folder says is what the session says. */
    void assertSaved(String message) {
        assertEquals(new Saving.Saved(Optional.empty()), session.standing().saving(), message);
        assertSame(session.definition(), read(folder), message);
    }

    static void delete(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void copy(Path from, Path to) {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        session.close();
    }
}
