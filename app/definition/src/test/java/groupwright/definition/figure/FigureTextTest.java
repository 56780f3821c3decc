package groupwright.definition.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FigureTextTest {
    @Test
    void leadBesideAnotherConceptIsRefusedInWords() {
        FigureText text = FigureText.parse("gear-range lead C-002");
        Invalid invalid = assertThrows(
                Invalid.class, () -> text.resolve(Catalogue.ofServices(), Optional.of(new RecordId("C-001"))));
        assertEquals("two records of one kind, C-002 and C-001; name one", invalid.wrong());
    }
}
