package groupwright.definition.quality;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The checks of requirement statements in one language. Immutable; loading reads the word lists once. */
public final class StatementChecks {
    /** So many findings of one check are reported for one statement; the first ones. */
    public static final int MOST_OF_A_CHECK = 20;

    private final Language language;
    private final Grammar grammar;
    private final List<Rule> rules;

    private StatementChecks(Language language) {
        this.language = language;
        grammar = new Grammar(
                language.grammar(), language.checks().get(Check.LOOPHOLE).phrases());
        rules = Stream.of(Check.values()).map(this::rule).toList();
    }

    /** The checks for a locale's language; English if that language has no word lists. */
    public static StatementChecks in(Locale locale) {
        return new StatementChecks(Language.of(locale));
    }

    /** The language of the words that are looked for, and of the advice. */
    public Locale locale() {
        return language.locale();
    }

    /** The short name of a check, for lists and headings. */
    public String title(Check check) {
        return language.checks().get(check).text("title").text();
    }

    /**
     * Finds what makes a statement hard to verify.
     *
     * <p>Words and simple sentence patterns only: there is no parser, so a finding is advice, and no finding is no proof
     * of a good requirement.
     *
     * <p>Cost: time linear in the length of the text; memory about 100 bytes a word on top of it.
     *
     * @return the findings in the order of their place in the text, at most {@link #MOST_OF_A_CHECK} of each check
     */
    public List<Finding> check(Statement statement) {
        Reading reading = grammar.read(statement);
        return rules.stream()
                .flatMap(rule -> rule.findings(reading).limit(MOST_OF_A_CHECK))
                .sorted(Comparator.comparingInt(Finding::from)
                        .thenComparingInt(Finding::to)
                        .thenComparing(Finding::check))
                .toList();
    }

    /** The EARS pattern of a statement; empty without "shall". Linear in the length of the text. */
    public Optional<EarsPattern> pattern(Statement statement) {
        Reading reading = grammar.read(statement);
        return reading.verb()
                .filter(verb -> verb.force() == Verb.Force.BINDING)
                .map(verb -> switch (reading.conditions().size()) {
                    case 0 -> EarsPattern.UBIQUITOUS;
                    case 1 -> reading.conditions().get(0).keyword().pattern;
                    default -> EarsPattern.COMPLEX;
                });
    }

    private Rule rule(Check check) {
        Advice advice = language.advice(check);
        return switch (check) {
            case EMPTY -> new EmptyRule(advice);
            case NO_SHALL -> new ShallRule(advice);
            case NO_SUBJECT -> new SubjectRule(advice, grammar);
            case SEVERAL -> new SeveralRule(advice, language.grammar().set("shall"));
            case NO_MEASURE -> new MeasureRule(advice, language.grammar());
            case NO_UNIT -> new NumberRule(advice);
            case COMPARATIVE -> new ComparativeRule(advice);
            case TOTALITY -> new TotalityRule(advice, language.grammar());
            case UNDATED_REFERENCE -> new ReferenceRule(advice);
            case DOUBLE_NEGATIVE -> new DoubleNegativeRule(advice);
            case SOLUTION -> new SolutionRule(advice);
            case EARS_ORDER -> new OrderRule(advice, grammar);
            case EARS_THEN -> new ThenRule(advice, grammar);
            case OPEN_POINT,
                    SUPERLATIVE,
                    SUBJECTIVE,
                    VAGUE_PRONOUN,
                    AMBIGUOUS_WORD,
                    AMBIGUOUS_LOGIC,
                    OPEN_ENDED,
                    OPEN_LIST,
                    LOOPHOLE,
                    NEGATIVE -> new WordRule(advice);
        };
    }
}
