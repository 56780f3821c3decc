package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.List;

/** Tells a folder that is to become a project from one that was taken for one. */
final class NoProject {
    static final String START_ONE = "start one with groupwright new FOLDER";

    private NoProject() {}

    /** @param names what lies in the folder, names that start with a point aside */
    static Problem problem(String folder, List<String> names) {
        return names.isEmpty()
                ? Problem.ofFile(folder, "is empty", START_ONE)
                : Problem.ofFile(folder, "holds no project.json", "open the folder that holds it, or " + START_ONE);
    }
}
