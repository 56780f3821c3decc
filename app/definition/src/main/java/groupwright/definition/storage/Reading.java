package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.Optional;

/** What was found where a file may lie. */
sealed interface Reading {
    /** Whether this is the version with that hash; an empty version means that there is to be no file. */
    boolean is(Optional<Sha256> version);

    record Whole(Content content) implements Reading {
        @Override
        public boolean is(Optional<Sha256> version) {
            return version.equals(Optional.of(content.sha256()));
        }
    }

    record Broken(Problem problem) implements Reading {
        @Override
        public boolean is(Optional<Sha256> version) {
            return false;
        }
    }

    record Absent() implements Reading {
        @Override
        public boolean is(Optional<Sha256> version) {
            return version.isEmpty();
        }
    }
}
