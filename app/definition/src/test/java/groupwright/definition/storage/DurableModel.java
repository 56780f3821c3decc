package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a power cut may leave of files and folders. The content of a file not forced may be empty, cut off or whole. Each
 * name in a folder not forced since it changed may show any of its states since, independently of other names and of
 * contents; only that a renamed file is found nowhere never happens (a rename is one transaction on every journalling
 * file system), and a folder is not found twice.
 */
final class DurableModel {
    private sealed interface Node {}

    private static final class FileNode implements Node {
        private final byte[] content;
        private boolean forced;

        FileNode(byte[] content) {
            this.content = content;
        }
    }

    private static final class FolderNode implements Node {
        private final Map<String, List<State>> names = new TreeMap<>();

        List<State> states(String name) {
            return names.computeIfAbsent(name, key -> new ArrayList<>(List.of(new State(Optional.empty()))));
        }
    }

    /** A state of a name: what it stands for, and which states of other names it cannot be without. */
    private static final class State {
        private final Optional<Node> node;
        private final Map<State, List<State>> needs = new IdentityHashMap<>();

        State(Optional<Node> node) {
            this.node = node;
        }
    }

    private final Path base;
    private final FolderNode root = new FolderNode();

    private DurableModel(Path base) {
        this.base = base;
    }

    static DurableModel of(Path base) throws IOException {
        DurableModel model = new DurableModel(base);
        model.load(base, model.root);
        return model;
    }

    private void load(Path folder, FolderNode node) throws IOException {
        for (Path path : new RealDisk().list(folder)) {
            Node child;
            if (Files.isDirectory(path)) {
                FolderNode below = new FolderNode();
                load(path, below);
                child = below;
            } else {
                FileNode file = new FileNode(Files.readAllBytes(path));
                file.forced = true;
                child = file;
            }
            node.names.put(path.getFileName().toString(), new ArrayList<>(List.of(new State(Optional.of(child)))));
        }
    }

    private FolderNode folder(Path path) {
        FolderNode node = root;
        for (Path name : base.relativize(path)) {
            if (!name.toString().isEmpty()) {
                node = (FolderNode) last(node.states(name.toString())).node.orElseThrow();
            }
        }
        return node;
    }

    private List<State> states(Path path) {
        return folder(path.getParent()).states(path.getFileName().toString());
    }

    private static State last(List<State> states) {
        return states.get(states.size() - 1);
    }

    void createDirectory(Path path) {
        states(path).add(new State(Optional.of(new FolderNode())));
    }

    void createFile(Path path, byte[] content) {
        states(path).add(new State(Optional.of(new FileNode(content))));
    }

    void force(Path path) {
        ((FileNode) last(states(path)).node.orElseThrow()).forced = true;
    }

    void delete(Path path) {
        states(path).add(new State(Optional.empty()));
    }

    /** A rename: the old name ends only where the new one begins, for folders also the other way round. */
    void move(Path from, Path to) {
        Node node = last(states(from)).node.orElseThrow();
        State begin = new State(Optional.of(node));
        State end = new State(Optional.empty());
        end.needs.put(begin, states(to));
        if (node instanceof FolderNode) {
            begin.needs.put(end, states(from));
        }
        states(to).add(begin);
        states(from).add(end);
    }

    /** A second name, then the end of the first. */
    void link(Path from, Path to) {
        move(from, to);
    }

    void forceDirectory(Path path) {
        folder(path).names.values().forEach(states -> settle(last(states), states));
    }

    private static void settle(State state, List<State> states) {
        int index = states.indexOf(state);
        if (index <= 0) {
            return; // settled before
        }
        List<State> passed = List.copyOf(states.subList(1, index + 1));
        states.subList(0, index).clear();
        passed.forEach(each -> each.needs.forEach(DurableModel::settle));
    }

    /** What a power cut leaves. */
    Left left(Chance chance) {
        Map<List<State>, Integer> chosen = new IdentityHashMap<>();
        choose(root, chance, chosen);
        boolean lowered = true;
        while (lowered) {
            lowered = false;
            for (Map.Entry<List<State>, Integer> choice : chosen.entrySet()) {
                int possible = possible(choice.getKey(), choice.getValue(), chosen);
                lowered |= possible < choice.setValue(possible);
            }
        }
        SortedMap<String, Optional<Content>> left = new TreeMap<>();
        collect(root, "", left, chance, chosen);
        return new Left(left);
    }

    private static void choose(FolderNode folder, Chance chance, Map<List<State>, Integer> chosen) {
        for (List<State> states : folder.names.values()) {
            if (chosen.put(states, chance.state(states.size())) == null) {
                for (State state : states) {
                    if (state.node.orElse(null) instanceof FolderNode below) {
                        choose(below, chance, chosen);
                    }
                }
            }
        }
    }

    private static int possible(List<State> states, int wanted, Map<List<State>, Integer> chosen) {
        for (int index = 1; index <= wanted; index++) {
            for (Map.Entry<State, List<State>> need : states.get(index).needs.entrySet()) {
                int place = need.getValue().indexOf(need.getKey());
                if (place > chosen.getOrDefault(need.getValue(), 0)) {
                    return index - 1;
                }
            }
        }
        return wanted;
    }

    private static void collect(
            FolderNode folder,
            String place,
            SortedMap<String, Optional<Content>> left,
            Chance chance,
            Map<List<State>, Integer> chosen) {
        for (Map.Entry<String, List<State>> name : folder.names.entrySet()) {
            Node node = name.getValue().get(chosen.get(name.getValue())).node.orElse(null);
            String path = place + name.getKey();
            if (node instanceof FolderNode below) {
                left.put(path, Optional.empty());
                collect(below, path + "/", left, chance, chosen);
            } else if (node instanceof FileNode file) {
                int length = file.forced ? file.content.length : chance.length(file.content.length);
                left.put(path, Optional.of(Content.adopt(Arrays.copyOf(file.content, length))));
            }
        }
    }

    /**
     * Files and folders left by a power cut.
     *
     * @param files content of each path, nothing for a folder
     */
    record Left(SortedMap<String, Optional<Content>> files) {
        void write(Path target) throws IOException {
            for (Map.Entry<String, Optional<Content>> file : files.entrySet()) { // folders sort before what they hold
                Path path = target.resolve(file.getKey());
                if (file.getValue().isPresent()) {
                    Files.write(path, file.getValue().get().bytes());
                } else {
                    Files.createDirectory(path);
                }
            }
        }
    }
}
