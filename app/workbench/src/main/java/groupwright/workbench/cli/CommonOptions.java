package groupwright.workbench.cli;

import picocli.CommandLine.Option;

/** Options of every command; picocli sets the fields. */
final class CommonOptions {
    /** The option that asks for JSON. */
    static final String JSON = "--json";

    /** The option that shows where the program broke. */
    static final String STACKTRACE = "--stacktrace";

    @Option(names = JSON, description = "Answer with one JSON object.")
    private boolean json;

    @Option(names = STACKTRACE, description = "After an internal error, show where it came from.")
    private boolean stacktrace;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    /** Whether the answer is for a machine. */
    boolean isForMachine() {
        return json;
    }
}
