package groupwright.workbench.cli;

import groupwright.definition.figure.Nearest;
import groupwright.definition.problem.Problem;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one sentence what is wrong with a command line and how it is written. */
final class Usage {
    private final CommandLine commands;
    private final List<String> arguments;

    Usage(CommandLine commands, List<String> arguments) {
        this.commands = commands;
        this.arguments = arguments;
    }

    /** Refuses a first word that is neither a command nor anything on the disk. */
    void checkCommandName(Surroundings surroundings) {
        if (arguments.isEmpty() || arguments.get(0).startsWith("-")) {
            return;
        }
        String word = arguments.get(0);
        if (commands.getSubcommands().containsKey(word) || Files.exists(surroundings.path(word))) {
            return;
        }
        throw Refusal.of(
                "there is no command and no folder \"" + word + "\"",
                meant(word, commands.getSubcommands().keySet())
                        .orElse("the commands are "
                                + String.join(", ", commands.getSubcommands().keySet())));
    }

    private static Optional<String> meant(String word, java.util.Collection<String> known) {
        return Nearest.of(word, known).map(near -> "did you mean " + near + "?");
    }

    /** What the parser did not understand. */
    Problem problem(ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        Optional<String> unknown = unknownOption(command);
        if (unknown.isPresent()) {
            return noOption(unknown.get(), command);
        } else if (wrong instanceof UnmatchedArgumentException unmatched) {
            return problem(
                    "\"" + unmatched.getUnmatched().get(0) + "\" is one word too many",
                    "write " + synopsis(command) + ", and put quotes around a name with blanks");
        } else if (wrong instanceof OverwrittenOptionException twice) {
            return problem(name(twice.getOverwritten()) + " is given twice", "give it once");
        } else if (wrong instanceof MissingParameterException missing) {
            ArgSpec first = missing.getMissing().get(0);
            boolean given = first instanceof OptionSpec option && isGiven(option);
            String needs =
                    given ? name(first) + " is given without " + first.paramLabel() : name(first) + " is missing";
            return problem(needs, "write " + synopsis(command));
        }
        return problem(firstLine(wrong), "write " + synopsis(command));
    }

    private Problem noOption(String option, CommandLine command) {
        return problem(
                "there is no option " + option + " in " + command.getCommandName(),
                meant(option, command.getCommandSpec().optionsMap().keySet()).orElse("write " + synopsis(command)));
    }

    /** An option nobody knows comes first: what the parser complains of may only follow from it. */
    private Optional<String> unknownOption(CommandLine command) {
        return arguments.stream()
                .filter(word -> word.matches("--?[A-Za-z].*"))
                .map(word -> word.contains("=") ? word.substring(0, word.indexOf('=')) : word)
                .filter(word -> !command.getCommandSpec().optionsMap().containsKey(word))
                .findFirst();
    }

    private boolean isGiven(OptionSpec option) {
        return arguments.stream().anyMatch(List.of(option.names())::contains);
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String synopsis(CommandLine command) {
        return String.join(" ", command.getCommandSpec().usageMessage().customSynopsis());
    }

    private static Problem problem(String wrong, String remedy) {
        return Problem.ofFile("", wrong, remedy);
    }

    private static String firstLine(ParameterException wrong) {
        return wrong.getMessage().lines().findFirst().orElse("the command line is not understood");
    }
}
