package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ForcingTest {
    private static final List<Path> FILES =
            IntStream.range(0, 1000).mapToObj(i -> Path.of("f" + i)).toList();

    @Test
    void allAreForcedOnReturn() throws IOException {
        Set<Path> forced = ConcurrentHashMap.newKeySet();
        new Forcing(new PassingDisk() {
                    @Override
                    public void force(Path file) {
                        forced.add(file);
                    }
                })
                .force(FILES);
        assertEquals(Set.copyOf(FILES), forced);
    }

    @Test
    void oneThatFailsIsReported() {
        Forcing forcing = new Forcing(new PassingDisk() {
            @Override
            public void force(Path file) throws IOException {
                if (file.equals(FILES.get(700))) {
                    throw new IOException("No space left on device");
                }
            }
        });
        IOException failure = assertThrows(IOException.class, () -> forcing.force(FILES));
        assertEquals("the disk is full", DiskTrouble.of(failure, Path.of("p")).wrong());
    }
}
