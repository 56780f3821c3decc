package groupwright.documents.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.documents.labels.Labels;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemarksTest {
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            walks                                     ~ zu Fuß
            112 rpm in the highest gear               ~ 112 1/min im höchsten Gang
            32/45                                     ~ 32/45
            32/10 to 32/45                            ~ 32/10 bis 32/45
            32/10 closes                              ~ 32/10 geht auf
            32/45 at full travel too tight            ~ 32/45 voll eingefedert zu straff
            32/10; 32/45 lacks 5 mm of chain at full travel, 3 in all do not close ~ 32/10; 32/45: es fehlen 5 mm Kette voll eingefedert, 3 gehen insgesamt nicht auf
            32/10 hangs slack by 12 mm                ~ 32/10 hängt um 12 mm durch
            32/45 has the guide pulley on the cog     ~ 32/45: Leitröllchen am Ritzel
            """)
    void remarksAreInTheReadersLanguageAndStayAsTheyAreInEnglish(String remark, String german) {
        assertEquals(german, Remarks.of(remark, Labels.of(Locale.GERMAN)));
        assertEquals(remark, Remarks.of(remark, Labels.of(Locale.ENGLISH)));
    }
}
