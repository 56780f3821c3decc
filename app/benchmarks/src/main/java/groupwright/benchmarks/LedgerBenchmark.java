package groupwright.benchmarks;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Subject;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * The ledger with 90,000 verdicts (10,000 requirements for three concepts and three rider groups): an edit with all its
 * answers settled, beside computing everything from scratch. Each call moves to the other of two projects made
 * beforehand, so that the next one moves back.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class LedgerBenchmark {
    private static final int DEEPEST = 100;

    private final LargeCatalogue catalogue = new LargeCatalogue();
    private Definition start;
    private Definition[] targets;
    private Definition[] riders;
    private Definition[] densities;
    private Ask[][] verdicts;
    private Ask[] askedOf;
    private Ledger ledger;
    private int turn;

    @Setup
    public void settleAll() {
        start = LargeProject.make();
        targets = new Definition[] {start, LargeProject.withTargets(start, 100, 300)};
        riders = new Definition[] {start, LargeProject.withRiders(start, 1000, List.of(LargeProject.group(1)))};
        densities = new Definition[] {start, LargeProject.withAirDensity(start, 1.1)};
        verdicts = catalogue.verdicts(start);
        askedOf = new Ask[LargeProject.GROUPS];
        for (int i = 0; i < askedOf.length; i++) {
            Subject group = Subject.of(LargeProject.group(i));
            askedOf[i] = new Ask(catalogue.catalogue().find("asked-of").orElseThrow(), group, Settings.NONE);
        }
        ledger = new Ledger(catalogue.catalogue(), start, DEEPEST);
        for (Ask[] ofOne : verdicts) {
            for (Ask ask : ofOne) {
                ledger.ask(ask);
            }
        }
        for (Ask ask : askedOf) {
            ledger.ask(ask);
        }
    }

    private void ask(int every, Blackhole answers) {
        for (int i = 0; i < verdicts.length; i += every) {
            for (Ask ask : verdicts[i]) {
                Answer answer = ledger.ask(ask);
                answers.consume(answer);
            }
        }
    }

    /** 100 targets change; their 900 verdicts are settled. */
    @Benchmark
    public void editHundredTargets(Blackhole answers) {
        ledger.moveTo(targets[++turn % 2]);
        ask(100, answers);
    }

    /** 1,000 requirements name another rider group; their 9,000 verdicts and the three lists are settled. */
    @Benchmark
    public void retargetThousand(Blackhole answers) {
        ledger.moveTo(riders[++turn % 2]);
        ask(10, answers);
        for (Ask ask : askedOf) {
            answers.consume(ledger.ask(ask));
        }
    }

    /** One number behind everything changes; all 90,000 verdicts are settled. */
    @Benchmark
    public void editWhatAllDependsOn(Blackhole answers) {
        ledger.moveTo(densities[++turn % 2]);
        ask(1, answers);
    }

    /** All 90,000 verdicts in a new ledger. */
    @Benchmark
    public void fromScratch(Blackhole answers) {
        ledger = new Ledger(catalogue.catalogue(), start, DEEPEST);
        ask(1, answers);
    }
}
