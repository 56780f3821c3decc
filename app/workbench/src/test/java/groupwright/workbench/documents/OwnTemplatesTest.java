package groupwright.workbench.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.project.ProjectTemplates;
import groupwright.documents.project.ProjectTemplates.Owner;
import groupwright.workbench.documents.OwnTemplates.Outcome;
import groupwright.workbench.look.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates on disk: nothing is lost and nothing overwritten unread. */
class OwnTemplatesTest {
    @TempDir
    Path project;

    private ProjectTemplates templates;
    private OwnTemplates own;

    @BeforeEach
    void begin() {
        templates = new ProjectTemplates(project);
        own = new OwnTemplates(templates, Words.of(OwnTemplates.class, Locale.ENGLISH));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(project.resolve("templates"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aCopyHoldsTheProgramsTextAndLeavesNothingBeside() throws IOException {
        String programs = templates.find("brief").text().orElseThrow();
        assertInstanceOf(Outcome.Done.class, own.copy("brief"));
        assertEquals(Owner.PROJECT, templates.find("brief").owner());
        assertEquals(programs, Files.readString(templates.file("brief")));
        assertEquals(List.of("brief.md"), files());
    }

    @Test
    void aCopyNeverGoesOverAFile() throws IOException {
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(templates.file("brief"), "mine");
        assertInstanceOf(Outcome.Refused.class, own.copy("brief"));
        assertEquals("mine", Files.readString(templates.file("brief")));
        assertEquals(List.of("brief.md"), files());
    }

    @Test
    void creatingRefusesATakenNameEvenBetweenLookAndWrite() throws IOException {
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(templates.file("brief"), "theirs");
        org.junit.jupiter.api.Assertions.assertThrows(
                java.nio.file.FileAlreadyExistsException.class,
                () -> AtomicText.create(templates.file("brief"), "mine"));
        assertEquals("theirs", Files.readString(templates.file("brief")));
        assertEquals(List.of("brief.md"), files());
    }

    @Test
    void savingNeedsTheFileAsItWasRead() throws IOException {
        own.copy("claims");
        Optional<String> read = templates.find("claims").text();
        Files.writeString(templates.file("claims"), "theirs");
        assertInstanceOf(Outcome.ChangedMeanwhile.class, own.save("claims", read, "mine"));
        assertEquals("theirs", Files.readString(templates.file("claims")));
        assertInstanceOf(Outcome.Done.class, own.save("claims", Optional.of("theirs"), "mine"));
        assertEquals("mine", Files.readString(templates.file("claims")));
        assertEquals(List.of("claims.md"), files());
    }

    @Test
    void aFileThatCannotBeReadIsNotWrittenOver() throws IOException {
        Files.createDirectories(project.resolve("templates"));
        byte[] noText = {(byte) 0xff, (byte) 0xfe, 0};
        Files.write(templates.file("brief"), noText);
        assertInstanceOf(Outcome.Refused.class, own.save("brief", Optional.empty(), "mine"));
        assertEquals(3, Files.size(templates.file("brief")));
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path elsewhere = Files.writeString(project.resolve("elsewhere.md"), "elsewhere");
        Files.createDirectories(project.resolve("templates"));
        Files.createSymbolicLink(templates.file("brief"), elsewhere);
        assertInstanceOf(Outcome.Refused.class, own.save("brief", Optional.of("elsewhere"), "mine"));
        assertEquals("elsewhere", Files.readString(elsewhere));
        assertTrue(Files.isSymbolicLink(templates.file("brief")));
    }

    @Test
    void backToTheProgramsKeepsEachCopy() throws IOException {
        for (String text : List.of("first", "second")) {
            own.copy("brief");
            own.save("brief", templates.find("brief").text(), text);
            assertInstanceOf(Outcome.Done.class, own.putAway("brief"));
            assertEquals(Owner.PROGRAM, templates.find("brief").owner());
        }
        assertEquals(List.of("brief.md.bak", "brief.md.bak-1"), files());
        assertEquals("first", Files.readString(project.resolve("templates/brief.md.bak")));
        assertEquals("second", Files.readString(project.resolve("templates/brief.md.bak-1")));
        assertFalse(templates.names().stream().anyMatch(name -> name.contains("bak")));
    }

    @Test
    void aNewTemplateIsListedBehindTheProgramsAndFills() {
        assertInstanceOf(Outcome.Done.class, own.add("test-plan"));
        List<String> names = templates.names();
        assertEquals("test-plan", names.get(names.size() - 1));
        assertTrue(templates.find("test-plan").text().orElseThrow().contains("{{ gear-range lead }}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Brief",
                "1a",
                "a/b",
                "../a",
                "a.md",
                "a b",
                "a23456789012345678901234567890123456789012",
                "brief"
            })
    void otherNamesAreRefusedInASentence(String name) {
        Outcome outcome = own.add(name);
        assertTrue(((Outcome.Refused) outcome).sentence().endsWith("."), () -> outcome.toString());
        assertFalse(Files.exists(project.resolve("templates")));
    }
}
