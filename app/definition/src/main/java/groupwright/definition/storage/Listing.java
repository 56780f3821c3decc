package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What lies in the folders of a project that concern us. Two equal listings with a reading between them mean that the
 * reading saw one moment.
 *
 * @param top names in the project folder, sorted
 * @param entries paths in the record folders and in the journal, with {@code /}, sorted
 * @param problems of the folders
 */
record Listing(Set<String> top, SortedMap<String, Stamp> entries, List<Problem> problems) {
    /** Tells versions of a file apart: each of our savings makes a new file with a key (inode) of its own. */
    record Stamp(long size, FileTime modified, Optional<Object> key) {}

    Listing {
        top = Collections.unmodifiableSet(new TreeSet<>(top));
        entries = Collections.unmodifiableSortedMap(entries);
        problems = List.copyOf(problems);
    }

    static Listing of(Path root, Set<String> recordFolders, Disk disk) throws IOException {
        Collector collector = new Collector(root, disk);
        Set<String> top = collector.names(root);
        for (String folder : new TreeSet<>(recordFolders)) {
            if (top.contains(folder)) {
                collector.addFolder(folder);
            }
        }
        if (top.contains(RecordPath.PROJECT.text())) {
            collector.addStamp(RecordPath.PROJECT.text());
        }
        if (top.contains(OwnFolder.NAME)) {
            collector.addOwnFolder();
        }
        return new Listing(top, collector.entries, collector.problems);
    }

    Optional<Stamp> stamp(RecordPath path) {
        return Optional.ofNullable(entries.get(path.text()));
    }

    /** The names in a folder below the project folder, sorted. */
    List<String> names(String folder) {
        String start = folder + "/";
        return entries.subMap(start, folder + "0").keySet().stream() // 0 follows / in ASCII
                .map(path -> path.substring(start.length()))
                .toList();
    }

    private static final class Collector {
        private final Path root;
        private final Disk disk;
        private final SortedMap<String, Stamp> entries = new TreeMap<>();
        private final List<Problem> problems = new ArrayList<>();

        Collector(Path root, Disk disk) {
            this.root = root;
            this.disk = disk;
        }

        Set<String> names(Path folder) throws IOException {
            Set<String> names = new TreeSet<>();
            disk.list(folder).forEach(path -> names.add(path.getFileName().toString()));
            return names;
        }

        void addFolder(String folder) throws IOException {
            Optional<Problem> problem = new RecordReader(root, disk).folderProblem(folder);
            problem.ifPresent(problems::add);
            if (problem.isEmpty()) {
                addNames(folder);
            }
        }

        private void addNames(String folder) throws IOException {
            try {
                for (String name : names(root.resolve(folder))) {
                    addStamp(folder + "/" + name);
                }
            } catch (NoSuchFileException e) {
                return; // went away meanwhile: the next listing will differ
            } catch (IOException e) {
                problems.add(Problem.ofFile(
                        folder, "cannot be read (" + DiskTrouble.detail(e) + ")", "look at its access rights"));
            }
        }

        void addOwnFolder() throws IOException {
            Optional<Problem> problem = new RecordReader(root, disk).folderProblem(OwnFolder.NAME);
            problem.ifPresent(problems::add);
            String journal = OwnFolder.NAME + "/" + OwnFolder.JOURNAL;
            if (problem.isEmpty() && Files.isDirectory(root.resolve(journal), NOFOLLOW_LINKS)) {
                addNames(journal);
            }
        }

        void addStamp(String path) throws IOException {
            try {
                BasicFileAttributes attributes =
                        Files.readAttributes(root.resolve(path), BasicFileAttributes.class, NOFOLLOW_LINKS);
                entries.put(
                        path,
                        new Stamp(
                                attributes.size(),
                                attributes.lastModifiedTime(),
                                Optional.ofNullable(attributes.fileKey())));
            } catch (NoSuchFileException e) {
                entries.remove(path); // went away meanwhile: the next listing will differ
            }
        }
    }
}
