package groupwright.workbench.riders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.Place;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RidersEditingTest {
    private final LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());

    private void with(Consumer<RidersPlace> act) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            act.accept(RidersPicturesTest.place(bench));
        });
    }

    /** Types into a cell and leaves it. */
    static ValueCell type(Place place, String address, String text) {
        ValueCell cell = cell(place, address);
        cell.field().setText(text);
        cell.take();
        return cell;
    }

    static ValueCell cell(Place place, String address) {
        Address at = Address.parse(address).orElseThrow();
        return (ValueCell) Components.named((Container) place.component(), "riders." + at)
                .orElseThrow()
                .getParent();
    }

    private static void press(Place place, String name) {
        Component found = Components.named((Container) place.component(), name).orElseThrow();
        if (found instanceof AbstractButton button) {
            button.doClick(0);
        } else {
            Components.click(found);
        }
    }

    private RiderGroup group() {
        return bench.definition().get(Sample.id("G-002"), RiderGroup.class).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"190.5 | 190.5 | 0", "190,5 | 190.5 | 0", "190 ± 5 | 190 | 5", "190,5 +/- 2,5 W | 190.5 | 2.5"})
    void commaAndPointAndBandsAreUnderstood(String typed, double value, double band) throws Exception {
        with(place -> {
            type(place, "G-002.powerAllDay_W", typed);
            assertEquals(Optional.of(new Amount(value, band)), group().powerAllDay_W());
            assertEquals(1, bench.edits.size());
        });
    }

    @Test
    void whatIsNoNumberSaysSoWhereItWasTypedAndStays() throws Exception {
        with(place -> {
            ValueCell cell = type(place, "G-002.powerAllDay_W", "19o");
            assertTrue(cell.refusal().startsWith("Not a number: “19o”."), cell.refusal());
            assertEquals("19o", cell.field().getText());
            bench.refresh();
            assertEquals("19o", cell.field().getText());
            assertEquals(List.of(), bench.edits);
        });
    }

    @Test
    void afterAnEditTheCellSaysWhatItWas() throws Exception {
        with(place -> {
            type(place, "G-002.powerAllDay_W", "190");
            List<String> names = Components.names(cell(place, "G-002.powerAllDay_W"));
            assertTrue(names.contains("was 140\u202fW"), names.toString());
        });
    }

    @Test
    void aWheelSetsBothOfItsFieldsInOneEdit() throws Exception {
        with(place -> {
            type(place, "G-002.tyre_mm", "60-584");
            assertEquals(Optional.of(Amount.of(60)), group().tyre_mm());
            assertEquals(Optional.of(Amount.of(584)), group().beadSeat_mm());
            assertEquals(1, bench.edits.size());
            ValueCell cell = type(place, "G-002.tyre_mm", "29er");
            assertTrue(cell.refusal().contains("57-622"), cell.refusal());
        });
    }

    @Test
    void whatARecordRefusesIsSaidAtTheCell() throws Exception {
        with(place -> {
            press(place, "riders.all");
            ValueCell cell = type(place, "G-002.mud_pct", "95"); // dust 15 and cold 10 stand there already
            assertTrue(cell.refusal().contains("more than 100 %"), cell.refusal());
            assertEquals(Amount.of(30), group().mud_pct());
        });
    }

    @Test
    void answeringANeedAddsADraftAndOpensIt() throws Exception {
        with(place -> {
            place.reveal(Address.of(Sample.id("N-006")));
            press(place, "riders.answer");
            Address opened = bench.opened.get(0);
            Requirement draft =
                    bench.definition().get(opened.record(), Requirement.class).orElseThrow();
            assertEquals(List.of(Sample.id("N-006")), draft.answers());
            assertEquals(Requirement.State.DRAFT, draft.state());
            assertEquals("“Front shifting in a gully: no thanks.”", draft.statement());
            assertEquals(List.of(Optional.of("Answer N-006")), bench.edits);
        });
    }

    @Test
    void aFieldBehindAllFieldsIsRevealed() throws Exception {
        with(place -> {
            place.reveal(Address.parse("G-003.downhillCap_kmh").orElseThrow());
            assertEquals("40", cell(place, "G-003.downhillCap_kmh").field().getText());
        });
    }
}
