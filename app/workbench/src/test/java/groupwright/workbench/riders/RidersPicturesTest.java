package groupwright.workbench.riders;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.EventQueue;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RidersPicturesTest {
    static RidersPlace place(LedgerBench bench) {
        return bench.show(new RidersPlace(bench, Catalogue.ofServices()));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1, 936", "DARK, 1, 936", "LIGHT, 2, 936", "LIGHT, 1.5, 592", "DARK, 1, 1400"})
    void showsGroupsSideBySide(Theme theme, double scale, int width) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(theme, scale);
            LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());
            RidersPlace place = place(bench);
            String name = "riders-" + theme + "-" + scale + "-" + width;
            int wide = (int) (width * scale);
            RidersEditingTest.type(place, "G-002.powerAllDay_W", "150");
            RidersEditingTest.type(place, "G-003.powerHour_W", "19o");
            Picture.of(place.component(), wide, (int) (900 * scale), 1);
            Picture.keep(Picture.of(place.component(), wide, (int) (900 * scale), 1), name);
            place.reveal(Address.of(Sample.id("N-006")));
            Picture.of(place.component(), wide, (int) (900 * scale), 1);
            Picture.keep(Picture.of(place.component(), wide, (int) (900 * scale), 1), name + "-detail");
            List<String> names = Components.names(place.component());
            assertTrue(
                    names.contains("Cadence of All-day trail rider: 50 to 92 rpm, preferred 65 to 85"),
                    names.toString());
            assertTrue(names.contains("was 140\u202fW"), names.toString());
            assertTrue(names.contains("nothing yet"), names.toString());
        });
    }

    @Test
    void anEmptyProjectLeadsToTheFirstRiderGroup() throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            LedgerBench bench =
                    new LedgerBench(Locale.UK, Definition.of(Sample.definition().project()));
            RidersPlace place = place(bench);
            Picture.keep(Picture.of(place.component(), 936, 500, 1), "riders-empty");
            assertTrue(Components.names(place.component()).contains("Add the first rider group"));
        });
    }
}
