package groupwright.workbench.cli;

import groupwright.definition.problem.Problem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Runs one command line and answers with an exit code; nothing it is given can make it throw. */
public final class CommandLineFace {
    private static final int HELP_WIDTH = 100;

    private final Surroundings surroundings;

    public CommandLineFace(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /**
     * Runs a command.
     *
     * @return 0 fine; 1 a requirement misses or a claim no longer holds; 2 bad usage or unreadable input; 3 internal error
     */
    public int run(List<String> arguments) {
        try {
            return parsedAndCalled(arguments).code();
        } catch (Refusal refusal) {
            return stopped(refusal.problems(), arguments, Exit.REFUSED).code();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return stopped(List.of(Problem.ofFile("", "interrupted before it was done", "")), arguments, Exit.BROKEN)
                    .code();
        } catch (Exception | Error broken) { // the last place where anything can be said about it
            return broken(broken, arguments).code();
        }
    }

    private Exit parsedAndCalled(List<String> arguments) throws Exception {
        CommandLine command = commands();
        Usage usage = new Usage(command, arguments);
        usage.checkCommandName(surroundings);
        ParseResult parsed;
        try {
            parsed = command.parseArgs(arguments.toArray(String[]::new));
        } catch (ParameterException wrong) {
            throw new Refusal(List.of(usage.problem(wrong)));
        }
        List<CommandLine> called = parsed.asCommandLineList();
        CommandLine last = called.get(called.size() - 1);
        if (last.isUsageHelpRequested()) {
            surroundings.answer(last.getUsageMessage(Ansi.OFF));
            return Exit.FINE;
        } else if (last.isVersionHelpRequested()) {
            surroundings.answer(String.join("\n", last.getCommandSpec().version()));
            return Exit.FINE;
        }
        Callable<Exit> job = last.getCommand();
        return job.call();
    }

    /** The commands, for parsing and for their help. */
    CommandLine commands() {
        CommandLine command = new CommandLine(new StartCommand(surroundings));
        command.addSubcommand(new CheckCommand(surroundings))
                .addSubcommand(new FiguresCommand(surroundings))
                .addSubcommand(new ExplainCommand(surroundings))
                .addSubcommand(new GearsCommand(surroundings))
                .addSubcommand(new CassettesCommand(surroundings))
                .addSubcommand(new PredictCommand(surroundings))
                .addSubcommand(new DocumentsCommand(surroundings))
                .addSubcommand(new NewCommand(surroundings));
        return command.setExpandAtFiles(false).setUsageHelpWidth(HELP_WIDTH);
    }

    private Exit stopped(List<Problem> problems, List<String> arguments, Exit exit) {
        problems.forEach(surroundings::say);
        if (arguments.contains(CommonOptions.JSON)) {
            surroundings.answer(JsonText.of(JsonText.problemsOnly(problems)));
        }
        return exit;
    }

    private Exit broken(Throwable broken, List<String> arguments) {
        String what = broken.getMessage() == null
                ? broken.getClass().getSimpleName()
                : broken.getClass().getSimpleName() + ", " + broken.getMessage();
        boolean shown = arguments.contains(CommonOptions.STACKTRACE);
        String remedy = shown
                ? "please report it with the lines below"
                : "run the same once more with " + CommonOptions.STACKTRACE + " and report what it shows";
        stopped(List.of(Problem.ofFile("", "internal error: " + what, remedy)), arguments, Exit.BROKEN);
        if (shown) {
            StringWriter trace = new StringWriter();
            broken.printStackTrace(new PrintWriter(trace));
            surroundings.say(trace.toString().strip());
        }
        return Exit.BROKEN;
    }
}
