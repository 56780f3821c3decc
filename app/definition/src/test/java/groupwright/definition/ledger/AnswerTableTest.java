package groupwright.definition.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnswerTableTest {
    @ParameterizedTest(name = "up to {0} answers")
    @ValueSource(ints = {5, 40, 43, 500, 4000})
    void behavesLikeAMap(int most) {
        Catalogue catalogue = ToyFigures.catalogue();
        Random random = new Random(most);
        AnswerTable table = new AnswerTable();
        Map<Ask, AnswerNode> model = new HashMap<>();
        for (int step = 0; step < 10 * most; step++) {
            int teeth = random.nextInt(most);
            Ask ask = Toys.ask(catalogue, "big-cogs", "C-001", "from-teeth", Integer.toString(teeth));
            assertEquals(Optional.ofNullable(model.get(ask)), table.find(ask));
            if (model.containsKey(ask)) {
                assertFalse(table.remove(new AnswerNode(ask)), "another answer to the same question");
                assertTrue(table.remove(model.remove(ask)));
                assertEquals(Optional.empty(), table.find(ask));
            } else {
                AnswerNode node = new AnswerNode(ask);
                table.add(node);
                model.put(ask, node);
            }
            assertEquals(model.size(), table.size());
        }
        assertEquals(new HashSet<>(model.values()), new HashSet<>(table.all()));
        assertEquals(model.size(), table.all().size());
    }
}
