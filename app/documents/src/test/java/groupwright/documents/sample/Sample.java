package groupwright.documents.sample;

import groupwright.documents.content.Band;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Content;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Unanswered;
import groupwright.documents.content.Verdict;
import groupwright.documents.template.DocumentBuilder;
import groupwright.documents.template.Expansion;
import groupwright.documents.template.Template;
import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import groupwright.documents.tree.DocumentTree;
import groupwright.documents.tree.Issue;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** An invented project for the tests of documents. */
public final class Sample implements Content {
    private final SortedMap<String, TextAnswer> texts = new TreeMap<>();
    private final SortedMap<String, BlockAnswer> blocks = new TreeMap<>();

    /** A project that answers nothing. */
    public static Sample empty() {
        return new Sample();
    }

    /** The same project with one more answer; the query's first word becomes a known name. */
    public Sample with(String query, TextAnswer answer) {
        Sample more = copy();
        more.texts.put(query, answer);
        return more;
    }

    /** The same project with one more block. */
    public Sample with(String block, BlockAnswer answer) {
        Sample more = copy();
        more.blocks.put(block, answer);
        return more;
    }

    private Sample copy() {
        Sample copy = new Sample();
        copy.texts.putAll(texts);
        copy.blocks.putAll(blocks);
        return copy;
    }

    @Override
    public TextAnswer text(String query) {
        TextAnswer answer = texts.get(query);
        return answer == null ? new Unanswered("there is no answer to \"" + query + "\"; ask for C-002") : answer;
    }

    @Override
    public BlockAnswer block(String name, String arguments) {
        return blocks.get(name);
    }

    @Override
    public SortedSet<String> names() {
        SortedSet<String> names = new TreeSet<>();
        texts.keySet().forEach(query -> names.add(query.split(" ")[0]));
        return names;
    }

    @Override
    public SortedSet<String> blockNames() {
        return new TreeSet<>(blocks.keySet());
    }

    /** A document of the invented project. */
    public static Issue issue() {
        return new Issue(
                "Specification",
                "Tarnbeck",
                "Fellmark Components. Invented sample data.",
                "C-002, 1 × 11",
                "draft 7 since milestone M-002",
                LocalDate.of(2026, 3, 14),
                "14 March 2026",
                "3f9a1c77d2e04b5586ab90cd",
                Locale.ENGLISH);
    }

    /** Builds a document that must be complete. */
    public static DocumentTree document(String template, Content content) {
        Expansion expansion = new DocumentBuilder().build(new Template("test.md", template), content, issue());
        if (expansion instanceof Expansion.Complete complete) {
            return complete.document();
        }
        throw new AssertionError(((Expansion.Refused) expansion).problems());
    }

    /** An entry without inputs. */
    public static TraceEntry entry(String figure, String id, String subject, String value, String unit) {
        return entry(figure, id, subject, value, unit, "", List.of(), List.of(), List.of());
    }

    private static TraceEntry entry(
            String figure,
            String id,
            String subject,
            String value,
            String unit,
            String formula,
            List<TraceInput> inputs,
            List<TraceEntry> uses,
            List<String> requirements) {
        return new TraceEntry(
                figure,
                id,
                subject,
                new ShownValue(value, unit),
                formula,
                inputs,
                uses,
                "",
                "geometry of toothed wheels",
                "wear and the chain's sag",
                1,
                requirements);
    }

    private static final List<Integer> COGS = List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45);

    /** The gears of concept C-002 and a handful of requirements. */
    public static Sample tarnbeck() {
        TraceInput cogs = new TraceInput("cogs", ShownValue.of("10, 12, 14 … 45"), "C-002.cogs");
        TraceInput ring = new TraceInput("ring", new ShownValue("32", "teeth"), "C-002.rings");
        TraceInput wheel = new TraceInput("roll-out", new ShownValue("2.312", "m"), "G-002.wheel");
        TraceEntry lowest = entry(
                "Lowest metres per turn",
                "lowest-development C-002 G-002",
                "C-002, G-002",
                "1.64",
                "m",
                "ring / largest cog · roll-out",
                List.of(ring, cogs, wheel),
                List.of(),
                List.of("R-001"));
        TraceEntry highest = entry(
                "Highest metres per turn",
                "highest-development C-002 G-002",
                "C-002, G-002",
                "7.40",
                "m",
                "ring / smallest cog · roll-out",
                List.of(ring, cogs, wheel),
                List.of(),
                List.of());
        TraceEntry range = entry(
                "Gear range",
                "gear-range C-002",
                "C-002",
                "450",
                "%",
                "100 · highest ratio / lowest ratio",
                List.of(ring, cogs),
                List.of(),
                List.of("R-007"));
        TraceEntry step = entry(
                "Largest step",
                "largest-step C-002 from-teeth=14",
                "C-002",
                "20.0",
                "%",
                "100 · (z₂ / z₁ − 1), from 14 teeth",
                List.of(cogs),
                List.of(),
                List.of("R-005"));
        TraceEntry target =
                entry("Target of R-005", "target R-005", "", "18", "%", "", List.of(), List.of(), List.of("R-005"));
        TraceEntry comfort = entry(
                "Cadence on the 12 % wall",
                "climb-cadence C-002 G-002 climb=wall",
                "C-002, G-002",
                "50.7",
                "rpm",
                "speed / lowest metres per turn",
                List.of(new TraceInput("power", new ShownValue("190", "W"), "G-002.power_1h_w")),
                List.of(lowest),
                List.of("R-001"));
        return empty().with("project.name", TextAnswer.of(new Inline.Plain("Tarnbeck")))
                .with("lead", TextAnswer.of(new Inline.Plain("C-002")))
                .with("gear-range lead", TextAnswer.of(Inline.Live.of(range)))
                .with("largest-step lead from-teeth=14", TextAnswer.of(Inline.Live.of(step)))
                .with("target R-005", TextAnswer.of(Inline.Live.of(target)))
                .with("lowest-development lead G-002", TextAnswer.of(Inline.Live.of(lowest)))
                .with("highest-development lead G-002", TextAnswer.of(Inline.Live.of(highest)))
                .with("verdict R-007", TextAnswer.of(new Inline.Judged(Verdict.MISSES)))
                .with("gears", gearTable())
                .with("requirements", requirementTable(comfort, step, range))
                .with(
                        "open",
                        new BlockAnswer.Items(List.of(
                                Phrase.of(
                                        "R-001 Too close to call: measure rolling resistance of the G-002 tyre. Owner: test"
                                                + " lead."),
                                Phrase.of("R-005 Needs smaller steps from 21 to 30 teeth or another target."),
                                Phrase.of("R-016 Missing input: guide-pulley gap; bikes B-003 and B-006 have no hanger"
                                        + " position."))))
                .with(
                        "needs",
                        new BlockAnswer.Repeated(List.of(
                                empty().with(
                                                "words",
                                                TextAnswer.of(
                                                        new Inline.Plain(
                                                                "On the last long wall I was standing still before the gear ran out.")))
                                        .with("id", TextAnswer.of(new Inline.Plain("N-001"))),
                                empty().with(
                                                "words",
                                                TextAnswer.of(new Inline.Plain(
                                                        "Between those two cogs it is either too hard or too easy.")))
                                        .with("id", TextAnswer.of(new Inline.Plain("N-003"))))));
    }

    private static BlockAnswer.Table gearTable() {
        List<List<Phrase>> rows = new java.util.ArrayList<>();
        for (int i = 0; i < COGS.size(); i++) {
            int cog = COGS.get(i);
            double step = i == 0 ? 0 : 100.0 * cog / COGS.get(i - 1) - 100;
            TraceEntry metres = entry(
                    "Metres per turn",
                    "development C-002 cog=" + cog,
                    "C-002, cog " + cog,
                    format("%.2f", 32.0 / cog * 2.312),
                    "m");
            rows.add(List.of(
                    Phrase.of(Integer.toString(cog)),
                    Phrase.of(format("%.3f", 32.0 / cog)),
                    Phrase.of(new Inline.Live(ShownValue.of(metres.shown().value()), metres)),
                    i == 0 ? Phrase.of() : Phrase.of(format("%.1f", step))));
        }
        return new BlockAnswer.Table(
                List.of(
                        Column.number("Cog"),
                        Column.number("Ratio"),
                        Column.number("Metres a turn, m"),
                        Column.number("Step, %")),
                rows);
    }

    private static BlockAnswer.Table requirementTable(TraceEntry comfort, TraceEntry step, TraceEntry range) {
        Map<String, Band> bands = Map.of("R-001", new Band(-0.006, 0.03), "R-003", new Band(-0.06, -0.02));
        return new BlockAnswer.Table(
                List.of(
                        Column.text("Id"),
                        Column.text("Requirement"),
                        Column.number("Target"),
                        Column.number("C-002"),
                        new Column("Margin", Column.Alignment.CENTRE),
                        Column.text("Verdict")),
                List.of(
                        requirement(
                                "R-001",
                                "Keep turning on the 12 % wall",
                                "at least 50 rpm",
                                Phrase.of(new Inline.Live(ShownValue.of("50.7"), comfort)),
                                0.014,
                                bands,
                                Verdict.MEETS_CLOSE),
                        requirement(
                                "R-003",
                                "Loaded over the pass, 8 %",
                                "at least 52 rpm",
                                Phrase.of("50.0"),
                                -0.038,
                                bands,
                                Verdict.MISSES),
                        requirement(
                                "R-005",
                                "No step that breaks the rhythm",
                                "at most 18 %",
                                Phrase.of(new Inline.Live(ShownValue.of("20.0"), step)),
                                -0.111,
                                bands,
                                Verdict.MISSES),
                        requirement(
                                "R-007",
                                "One range for valley and pass",
                                "at least 480 %",
                                Phrase.of(new Inline.Live(ShownValue.of("450"), range)),
                                -0.0625,
                                bands,
                                Verdict.MISSES),
                        requirement(
                                "R-008",
                                "A straight chain in the lowest gear",
                                "at most 3.5°",
                                Phrase.of("2.4"),
                                0.31,
                                bands,
                                Verdict.MEETS),
                        List.of(
                                Phrase.of("R-016"),
                                Phrase.of("It fits the six listed bikes"),
                                Phrase.of("at least 6 mm"),
                                Phrase.of(),
                                Phrase.of(Inline.Bar.missing()),
                                Phrase.of(new Inline.Judged(Verdict.MISSING_INPUT)))));
    }

    private static List<Phrase> requirement(
            String id,
            String title,
            String target,
            Phrase value,
            double margin,
            Map<String, Band> bands,
            Verdict verdict) {
        return List.of(
                Phrase.of(id),
                Phrase.of(title),
                Phrase.of(target),
                value,
                Phrase.of(new Inline.Bar(margin, Optional.ofNullable(bands.get(id)), verdict)),
                Phrase.of(new Inline.Judged(verdict)));
    }

    private static String format(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }

    /** A template that uses everything once. */
    public static final String TEMPLATE = """
            # 4 Gearing

            This section says what the gears of the lead concept {{ lead }} must do for the riders of
            section 2, and what they do today.

            ## 4.1 Range

            The gear range shall be at least 480 %. {{ lead }} gives {{ gear-range lead }} and {{ verdict R-007 }},
            from {{ lowest-development lead G-002 }} to {{ highest-development lead G-002 }} per crank turn on the
            wheel 57-622.

            > **Caution.** Loads and lives here describe bench tests, not a safety limit. What carries a rider is
            > settled by the standards in force and by licensed practice.

            ## 4.2 Steps

            From 14 teeth upwards no step shall exceed {{ target R-005 }}. {{ lead }} does not meet this: its largest
            step is {{ largest-step lead from-teeth=14 }}, from 25 to 30 teeth.

            ```gears
            Gears of {{ lead }}, one ring of 32 teeth, wheel 57-622 (2.312 m round)
            ```

            ## 4.3 What this section asks

            ```requirements state=agreed
            Requirements on gearing, with margin and band
            ```

            ## 4.4 What is still open

            ```open
            ```

            ## 4.5 Riders' words

            ````needs
            **{{ id }}** "{{ words }}"
            ````

            How to ask for a number yourself:

            1. Write the figure between braces, for example `{{ gear-range lead }}`.
            2. Build the document again:

               ```text
               groupwright documents PROJECT --only specification --out DIR
               ```
            """;
}
