package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "groupwright {0}")
    @CsvSource(delimiter = '~', textBlock = """
            chek x                         ~ there is no command and no folder "chek"; did you mean check?
            zebra                          ~ there is no command and no folder "zebra"; the commands are check, figures, explain, gears, cassettes, predict, documents, new.
            check                          ~ PROJECT is missing; write groupwright check PROJECT [--strict] [--json].
            check --strct x                ~ there is no option --strct in check; did you mean --strict?
            check --qwertyuiop x           ~ there is no option --qwertyuiop in check; write groupwright check PROJECT [--strict] [--json].
            check a b                      ~ "b" is one word too many; write groupwright check PROJECT [--strict] [--json], and put quotes around a name with blanks.
            check x --json=2               ~ Invalid value for option '--json': '2' is not a boolean; write groupwright check PROJECT [--strict] [--json].
            documents x                    ~ --out is missing; write groupwright documents PROJECT [--only NAME,…] [--bike B-001,…] [--formats markdown,html,pdf] [--date 2026-03-09] [--language en|de] [--measures metric|imperial] [--paper a4|letter] --out DIR [--json].
            documents x --out              ~ --out is given without DIR; write groupwright documents PROJECT [--only NAME,…] [--bike B-001,…] [--formats markdown,html,pdf] [--date 2026-03-09] [--language en|de] [--measures metric|imperial] [--paper a4|letter] --out DIR [--json].
            documents x --out a --out b    ~ --out is given twice; give it once.
            documents x --out a --date 1.2.2026 ~ --date: "1.2.2026" is no date; write year, month and day, for example 2026-03-09.
            documents x --out a --measures us ~ --measures: "us" is no system of measures; write metric or imperial.
            documents x --out a --formats pdf,docx ~ --formats: "docx" is no format of the documents; write one or more of markdown,html,pdf.
            documents x --out a --language fr ~ --language: "fr" is no language of the documents; write en or de.
            explain x                      ~ FIGURE is missing; write groupwright explain PROJECT "FIGURE SUBJECT…" [--moves [--change 1]] [--json].
            explain x y --change 2         ~ --change is for --moves; add --moves.
            explain x y --moves --change 0 ~ --change: a change of 0.0 % says nothing; write one above 0 and up to 100 %.
            explain x y --moves --change 1% ~ --change: "1%" is no number; write it with a point, for example 57 or 57.5.
            predict                        ~ PROJECT is missing; write groupwright predict PROJECT [C-001 …] [--riders G-001] [--gpx FILE | --length KM] [--headwind KMH] [--json].
            predict x --length far         ~ --length: "far" is no number; write it with a point, for example 57 or 57.5.
            predict x --length 5 --gpx y   ~ the track of --gpx has a length of its own; leave --length out.
            predict x --gpx nowhere.gpx    ~ nowhere.gpx: does not exist; name a recorded track as GPX.
            predict nowhere                ~ nowhere: does not exist; look at the name or start one with groupwright new FOLDER.
            figures x --workings           ~ --workings is for --json; add --json, or ask for one figure with groupwright explain.
            cassettes --largest 45 --cogs 11 ~ --smallest is missing; write groupwright cassettes --smallest 10 --largest 42-48 --cogs 11 [--objectives NAME,…] [LIMITS] [--why TEETH,…] [--neighbours TEETH,…] [--for PROJECT [--concept C-001]] [--ring 32] [--show 500] [--csv | --json].
            cassettes --smalest 10         ~ there is no option --smalest in cassettes; did you mean --smallest?
            --jsn                          ~ there is no option --jsn in groupwright; did you mean --json?
            check nowhere                  ~ nowhere: does not exist; look at the name or start one with groupwright new FOLDER.
            """)
    void mistakeIsOneSentence(String line, String sentence) {
        Run run = Run.in(folder, line.split(" "));
        String shown = run.err().replace(folder + "/", "");
        assertAll(
                () -> assertEquals(sentence + "\n", shown),
                () -> assertEquals(2, run.exit()),
                () -> assertEquals("", run.out()));
    }

    @Test
    void withoutTheBuiltProgramThereIsNoSample() {
        Run run = Run.in(folder);
        assertEquals(
                "No window: this program was started without a window; the documents are written instead.\n"
                        + "the sample project is not beside the program; build the program, or name a project: groupwright FOLDER.\n",
                run.err());
        assertEquals(2, run.exit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "figures", "explain", "gears", "cassettes", "predict", "documents", "new"})
    void everyCommandHasHelpAndJson(String command) {
        Run run = Run.in(folder, command, "--help");
        assertEquals(0, run.exit());
        assertTrue(run.out().startsWith("Usage: groupwright " + command + " "), run.out());
        assertTrue(run.out().contains("--json "), run.out());
    }

    @Test
    void onlyCommandsThatAreThereAreAdvertised() {
        String help = Run.in(folder, "--help").out();
        List<String> commands = help.lines()
                .filter(line -> line.matches(" {2}[a-z].*"))
                .map(line -> line.strip().split(" ")[0])
                .toList();
        assertEquals(
                List.of("check", "figures", "explain", "gears", "cassettes", "predict", "documents", "new"), commands);
    }

    @Test
    void aFileNamedWithAtSignIsNoArgumentFile() {
        assertEquals(
                "there is no command and no folder \"@arguments\"; the commands are"
                        + " check, figures, explain, gears, cassettes, predict, documents, new.\n",
                Run.in(folder, "@arguments").err());
    }
}
