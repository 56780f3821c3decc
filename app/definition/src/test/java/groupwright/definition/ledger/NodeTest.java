package groupwright.definition.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Need;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The edges between reads and answers. */
class NodeTest {
    private static InputNode input() {
        return new InputNode.Other(new Read.Presence(RecordId.PROJECT), true);
    }

    private static Set<Derived> dependents(Node node) {
        Set<Derived> found = Collections.newSetFromMap(new IdentityHashMap<>());
        node.forEachDependent(dependent -> assertTrue(found.add(dependent), "stands twice"));
        assertEquals(found.size(), node.dependentCount());
        return found;
    }

    @ParameterizedTest(name = "up to {0} readers")
    @ValueSource(ints = {3, 15, 16, 17, 20, 60, 3000})
    void readersAreASet(int most) {
        Random random = new Random(most);
        InputNode shared = input();
        List<Derived> readers = new ArrayList<>();
        for (int step = 0; step < 6 * most; step++) {
            boolean grow = step < 2 * most ? random.nextInt(4) > 0 : random.nextInt(4) == 0;
            if (grow && readers.size() < most) {
                Derived reader = new AnswerNode(Sums.SUM);
                reader.setInputs(new Node[] {input(), shared});
                readers.add(reader);
            } else if (!grow && !readers.isEmpty()) {
                Derived reader = readers.remove(random.nextInt(readers.size()));
                reader.setInputs(new Node[] {input()});
            }
            if (step % (1 + most / 20) == 0) {
                Set<Derived> expected = Collections.newSetFromMap(new IdentityHashMap<>());
                expected.addAll(readers);
                assertEquals(expected, dependents(shared));
            }
        }
    }

    /** Finding one reader, to take it away, does not take longer with their number. */
    @ParameterizedTest(name = "{0} readers")
    @ValueSource(ints = {1000, 10_000, 100_000})
    void aReaderIsFoundWithFewLooks(int count) {
        InputNode shared = input();
        List<Derived> readers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Derived reader = new AnswerNode(Sums.SUM);
            reader.setInputs(new Node[] {shared});
            readers.add(reader);
        }
        double looks = 0;
        for (Derived reader : readers) {
            looks += shared.looksFor(reader);
        }
        // linear probing, Knuth, The Art of Computer Programming, vol. 3, 6.4 (from memory): (1 + 1/(1 − 2/3))/2 = 2
        assertTrue(looks / count < 4, looks / count + " looks for each");
    }

    @Test
    void nodesAreListedOnceInTheOrderOfFirstReading() {
        Random random = new Random(2);
        for (int size : new int[] {1, 15, 16, 17, 18, 40}) {
            List<Node> all = new ArrayList<>();
            NodeList list = new NodeList();
            for (int i = 0; i < size; i++) {
                all.add(input());
                list.add(all.get(i));
                list.add(all.get(random.nextInt(i + 1)));
            }
            assertEquals(all, List.of(list.toArray()));
        }
    }

    private static final int READERS = 50_000;

    /** One field of the project is read for every need; the needs turn away from it one after another. */
    @Test
    void fiftyThousandReadersLeaveARecordOneByOne() {
        Catalogue catalogue = new Catalogue(List.of(ToyFigures.named("reads-or-not", Scope.NEED)
                .computedBy(in -> ToyFigures.number(
                        in.get(in.subject(Scope.NEED), Need.RETIRED).isEmpty()
                                ? in.amount(RecordId.PROJECT, Project.AIR_DENSITY)
                                : 0))));
        Definition definition = needs();
        Ledger ledger = new Ledger(catalogue, definition, 10);
        List<Ask> asks = new ArrayList<>();
        for (int i = 0; i < READERS; i++) {
            asks.add(new Ask(catalogue.all().get(0), Subject.of(RecordId.of("N", i)), Settings.NONE));
        }
        asks.forEach(ledger::ask);
        InputNode shared = ledger.input(RecordId.PROJECT, Project.AIR_DENSITY);
        assertEquals(READERS, shared.dependentCount());
        Collections.shuffle(asks, new Random(3));
        for (int i = 0; i < READERS; i++) {
            Ask ask = asks.get(i);
            definition = definition.with(Address.of(ask.subject().ids().get(0), "retired"), Optional.of("no longer"));
            ledger.moveTo(definition);
            long before = ledger.computations();
            assertEquals(ToyFigures.number(0), ledger.ask(ask));
            assertEquals(before + 1, ledger.computations());
            assertEquals(READERS - 1 - i, shared.dependentCount());
        }
        assertSame(shared, ledger.input(RecordId.PROJECT, Project.AIR_DENSITY));
    }

    private static Definition needs() {
        Need like = Toys.record(RecordKinds.NEED, 0, "retired", "");
        List<Entry> needs = new ArrayList<>();
        for (int i = 0; i < READERS; i++) {
            needs.add(Toys.with(like, RecordId.of("N", i)));
        }
        return Definition.of(Toys.empty().project(), needs);
    }
}
