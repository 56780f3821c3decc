package groupwright.workbench.claims;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.EventQueue;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimsPicturesTest {
    static final Clock DAY = Clock.fixed(Instant.parse("2026-03-20T09:00:00Z"), ZoneOffset.UTC);

    static ClaimsPlace place(LedgerBench bench) {
        return bench.show(new ClaimsPlace(bench, Catalogue.ofServices(), DAY));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1, 936", "DARK, 1, 936", "LIGHT, 2, 936", "LIGHT, 1.5, 592", "DARK, 1, 1400"})
    void showsWhatEachClaimRestsOn(Theme theme, double scale, int width) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(theme, scale);
            LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());
            ClaimsPlace place = place(bench);
            String name = "claims-" + theme + "-" + scale + "-" + width;
            int wide = (int) (width * scale);
            Picture.keep(Picture.of(place.component(), wide, (int) (820 * scale), 1), name);
            place.reveal(Address.of(Sample.id("K-011")));
            bench.select(Sample.ask("mass-predicted C-002"));
            Picture.of(place.component(), wide, (int) (1000 * scale), 1);
            Picture.keep(Picture.of(place.component(), wide, (int) (1000 * scale), 1), name + "-detail");
            List<String> names = Components.names(place.component());
            assertTrue(names.contains("“Over 17 % lighter than our set with two rings”"), names.toString());
            assertTrue(names.contains("project allowance estimated"), names.toString());
            assertTrue(names.contains("marketing lead, 19 January 2026"), names.toString());
        });
    }
}
