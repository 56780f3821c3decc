package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Brings a project whose writer was stopped back in order: committed edits are finished, others thrown away. */
record Recovery(Path root, Disk disk) {
    /**
     * To be called by the holder of the lock.
     *
     * @return an edit that could not be finished; it is kept aside, unless it is for a newer version to finish
     */
    Optional<Problem> recover() throws IOException {
        OwnFolder own = new OwnFolder(root, disk);
        Journal.Found found = new Journal(root, disk).find();
        Optional<Problem> problem = Optional.empty();
        if (found instanceof Journal.Found.Edit edit) {
            Finishing.Result result = new Finishing(root, disk).finish(edit.manifest());
            problem =
                    result instanceof Finishing.Result.SetAside aside ? Optional.of(aside.problem()) : Optional.empty();
        } else if (found instanceof Journal.Found.Damaged damaged) {
            problem = Optional.of(Problem.ofFile(
                    own.setJournalAside(),
                    damaged.problem().wrong(),
                    damaged.problem().remedy()));
        }
        own.clear();
        return problem;
    }
}
