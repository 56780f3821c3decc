package groupwright.documents.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TraceRegisterTest {
    private static TraceEntry entry(String id, String value, TraceEntry... uses) {
        return new TraceEntry(id, id, "", ShownValue.of(value), "", List.of(), List.of(uses), "", "", "", 1, List.of());
    }

    @Test
    void theSameNumberHasOneEntryAndCountsItsPlaces() {
        TraceRegister register = new TraceRegister();
        assertEquals(new Use(1, 1), register.use(entry("a", "1")));
        assertEquals(new Use(2, 1), register.use(entry("b", "1")));
        assertEquals(new Use(1, 2), register.use(entry("a", "1")));
        Trace trace = register.trace();
        assertEquals(2, trace.entries().size());
        assertEquals(List.of(new Use(1, 1), new Use(1, 2)), trace.entry(1).uses());
    }

    @Test
    void anotherValueOfTheSameFigureIsAnotherNumber() {
        TraceRegister register = new TraceRegister();
        register.use(entry("a", "1"));
        assertEquals(new Use(2, 1), register.use(entry("a", "2")));
    }

    @Test
    void whatANumberRestsOnHasEntriesToo() {
        TraceEntry deepest = entry("c", "3");
        TraceEntry middle = entry("b", "2", deepest);
        TraceRegister register = new TraceRegister();
        register.use(entry("a", "1", middle, deepest));
        Trace trace = register.trace();
        assertEquals(
                List.of("a", "b", "c"),
                trace.entries().stream().map(e -> e.entry().id()).toList());
        assertEquals(List.of(2, 3), trace.entry(1).restsOn());
        assertEquals(List.of(3), trace.entry(2).restsOn());
        assertEquals(0, trace.entry(3).places());
    }
}
