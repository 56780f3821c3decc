package groupwright.definition.quality;

import java.util.stream.Stream;

/** One check, made for one language. */
interface Rule {
    /** What is found, from left to right; linear in the length of the statement. */
    Stream<Finding> findings(Reading reading);
}
