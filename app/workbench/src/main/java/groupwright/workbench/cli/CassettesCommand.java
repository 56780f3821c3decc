package groupwright.workbench.cli;

import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.SideTravel;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.Cancelled;
import groupwright.drivetrain.search.CassetteSearch;
import groupwright.drivetrain.search.Columns;
import groupwright.drivetrain.search.Contradiction;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Spread;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds the cassettes that no other beats; needs no project. */
@Command(
        name = "cassettes",
        customSynopsis = "groupwright cassettes --smallest 10 --largest 42-48 --cogs 11 [--objectives NAME,…] [LIMITS]"
                + " [--why TEETH,…] [--neighbours TEETH,…] [--for PROJECT [--concept C-001]] [--ring 32]"
                + " [--show 500] [--csv | --json]",
        sortOptions = false,
        description = {
            "Find the cassettes that no other beats in largest step, unevenness, mismatch, mass and gear range.",
            "Numbers of ends and cogs may be ranges such as 42-48. The answer names how many cassettes it speaks for."
        })
final class CassettesCommand implements Callable<Exit> {
    private static final String USUAL_CADENCE = "70";
    private static final String USUAL_SPACING = "3.9"; // about what eleven cogs have; from memory, no source

    private final Surroundings surroundings;

    @Option(names = "--smallest", required = true, paramLabel = "TEETH", description = "Smallest cog, or a range.")
    private String smallest;

    @Option(names = "--largest", required = true, paramLabel = "TEETH", description = "Largest cog, or a range.")
    private String largest;

    @Option(names = "--cogs", required = true, paramLabel = "COUNT", description = "How many cogs, or a range.")
    private String count;

    @Option(
            names = "--objectives",
            paramLabel = "NAME,…",
            description = "What they are compared by: largest-step, unevenness, mismatch, mass, gear-range; if left"
                    + " out, all, gear-range only over ranges. Without gear-range only cassettes of the same ends and"
                    + " count are compared.")
    private String objectives;

    @Mixin
    private CassetteLimits limits;

    @Option(names = "--why", paramLabel = "TEETH,…", description = "Tell where this cassette stands.")
    private String why;

    @Option(
            names = "--neighbours",
            paramLabel = "TEETH,…",
            description = "Tell what one tooth more or fewer does to each inner cog of this cassette.")
    private String neighbours;

    @Option(
            names = "--for",
            paramLabel = "PROJECT",
            description = "Judge the cassettes by the requirements of a project; where all miss something, tell what"
                    + " would have to give way.")
    private String project;

    @Option(
            names = "--concept",
            paramLabel = "C-001",
            description = "The concept whose cogs they replace; the lead if left out.")
    private String concept;

    @Option(
            names = "--ring",
            paramLabel = "TEETH",
            description = "Ring for the longest wait and side travel, and for the project in place of the concept's.")
    private String ring;

    @Option(names = "--cadence", paramLabel = "RPM", description = "Cadence for the longest wait; 70 if left out.")
    private String cadence;

    @Option(
            names = "--spacing",
            paramLabel = "MM",
            description = "Distance from cog to cog for the side travel; 3.9 if left out.")
    private String spacing;

    @Option(
            names = "--show",
            paramLabel = "N",
            description = "How many to show at most, 10 to 100000; 500 if left out.")
    private String show;

    @Option(names = "--csv", description = "Answer with a table of comma separated values.")
    private boolean csv;

    @Mixin
    private CommonOptions options;

    CassettesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        refuseWhatDoesNotGoTogether();
        Question question = question();
        Optional<Columns.Use> use = use();
        int most = show == null ? Spread.USUAL : Words.whole("--show", show);
        Words.checked("--show", () -> Bounds.count("the number of cassettes to show", most, 10, 100_000));
        Optional<Cassette> asked = cassette("--why", why);
        Optional<Cassette> around = cassette("--neighbours", neighbours);
        Interruption interruption = new Interruption(Thread.currentThread());
        try (Watch watch = Watch.on(surroundings)) {
            BestSet best = found(question, watch);
            CassettesReport report = new CassettesReport(
                    best,
                    Spread.of(best, most),
                    use,
                    Optional.empty(),
                    asked.map(best::standing),
                    around.map(one -> new CassettesReport.Around(one, Neighbour.of(one, question))));
            return project == null ? answer(report, watch) : judged(report, watch);
        } catch (Cancelled cancelled) {
            throw new InterruptedException();
        } finally {
            interruption.end();
        }
    }

    private void refuseWhatDoesNotGoTogether() {
        if (csv && options.isForMachine()) {
            throw Refusal.of("the answer is either --csv or --json", "leave one out");
        } else if (csv && (why != null || neighbours != null)) {
            throw Refusal.of("--csv holds the cassettes found", "leave out --why and --neighbours, or take --json");
        } else if (concept != null && project == null) {
            throw Refusal.of("--concept is for --for", "add --for PROJECT");
        } else if (ring == null && (cadence != null || spacing != null)) {
            throw Refusal.of(
                    (cadence == null ? "--spacing" : "--cadence") + " is for --ring", "add for example --ring 32");
        }
    }

    private Question question() {
        Span least = Words.span("--smallest", smallest);
        Span most = Words.span("--largest", largest);
        Span cogs = Words.span("--cogs", count);
        boolean ranges = Stream.of(least, most, cogs).anyMatch(CassettesReport::isRange);
        Set<Objective> chosen = objectives(ranges);
        if (ranges && chosen.equals(EnumSet.of(Objective.MASS))) {
            throw Refusal.of(
                    "mass alone cannot compare cassettes over a range, for fewer and smaller cogs always weigh less",
                    "add gear-range to --objectives, or give one number each for ends and cogs");
        }
        Limits kept = limits.limits();
        try {
            return new Question(least, most, cogs, kept, chosen, SprocketMass.ASSUMED);
        } catch (Contradiction contradiction) {
            throw Refusal.saying(contradiction.getMessage());
        }
    }

    private Set<Objective> objectives(boolean ranges) {
        Set<Objective> chosen = EnumSet.allOf(Objective.class);
        if (objectives != null) {
            chosen.clear();
            Arrays.stream(objectives.split(",", -1))
                    .map(String::strip)
                    .map(CassettesCommand::objective)
                    .forEach(chosen::add);
        } else if (!ranges) {
            chosen.remove(Objective.GEAR_RANGE);
        }
        return chosen;
    }

    private static Objective objective(String name) {
        List<String> names =
                Arrays.stream(Objective.values()).map(Objective::id).toList();
        return Arrays.stream(Objective.values())
                .filter(objective -> objective.id().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.of(
                        "--objectives: \"" + name + "\" is no objective",
                        Nearest.of(name, names)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("write one or more of " + String.join(",", names))));
    }

    private Optional<Columns.Use> use() {
        if (ring == null) {
            return Optional.empty();
        }
        Chainring chosen = Words.checked("--ring", () -> new Chainring(Words.whole("--ring", ring)));
        double rpm = Words.decimal("--cadence", cadence == null ? USUAL_CADENCE : cadence);
        double mm = Words.decimal("--spacing", spacing == null ? USUAL_SPACING : spacing);
        return Optional.of(Words.checked("--ring", () -> new Columns.Use(chosen, rpm, mm, SideTravel.Extra.NONE)));
    }

    private static Optional<Cassette> cassette(String option, String text) {
        return Optional.ofNullable(text)
                .map(teeth -> Words.checked(option, () -> Cassette.of(Words.teeth(option, teeth))));
    }

    private BestSet found(Question question, Watch watch) {
        try {
            return CassetteSearch.find(question, watch.doing("searching"));
        } catch (Contradiction tooLarge) {
            throw Refusal.saying(tooLarge.getMessage());
        }
    }

    private Exit judged(CassettesReport report, Watch watch) throws InterruptedException {
        Judgement.Request request = new Judgement.Request(
                Optional.ofNullable(concept), report.use().map(one -> one.ring().teeth()));
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> {
            try {
                return answer(report.with(Judgement.of(opened, request, report, watch)), watch);
            } catch (Invalid invalid) {
                throw Refusal.of(invalid);
            }
        });
    }

    private Exit answer(CassettesReport report, Watch watch) {
        watch.close(); // answers may go to the same screen
        if (options.isForMachine()) {
            surroundings.answer(JsonText.of(CassettesJson.of(report)));
        } else if (csv) {
            surroundings.answer(CassettesCsv.of(report));
        } else {
            surroundings.answer(new CassettesText(report, new Reader(Locale.ENGLISH)).text());
        }
        return Exit.FINE;
    }
}
