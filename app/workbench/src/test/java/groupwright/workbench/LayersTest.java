package groupwright.workbench;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Which package may know which. */
@AnalyzeClasses(packages = "groupwright", importOptions = DoNotIncludeTests.class)
class LayersTest {
    private static final String DEFINITION = "groupwright.definition.";

    /** For each package of the definition, the others of our packages that it may know. */
    private static final Map<String, List<String>> MAY_KNOW = Map.ofEntries(
            Map.entry("record", List.of()),
            Map.entry("problem", List.of()),
            Map.entry("quality", List.of()),
            Map.entry("figure", List.of("record")),
            Map.entry("ledger", List.of("figure", "record")),
            Map.entry("figures", List.of("figure", "record", "drivetrain")),
            Map.entry("sensitivity", List.of("ledger", "figure", "record")),
            Map.entry("assessment", List.of("ledger", "figure", "record")),
            Map.entry("cassettes", List.of("assessment", "ledger", "figure", "record", "drivetrain")),
            Map.entry("history", List.of("ledger", "figure", "record")),
            Map.entry("storage", List.of("problem")),
            // Circles among records are a mistake of the files, and the ledger is who finds them.
            Map.entry("interchange", List.of("record", "problem", "figure", "ledger")),
            Map.entry("project", List.of("interchange", "storage", "record", "problem")),
            Map.entry(
                    "session",
                    List.of(
                            "project",
                            "interchange",
                            "storage",
                            "history",
                            "assessment",
                            "ledger",
                            "figure",
                            "record",
                            "problem")),
            Map.entry("reference", List.of("ledger", "figure", "record")));

    @ArchTest
    static final ArchRule modulesPointOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("drivetrain")
            .definedBy("groupwright.drivetrain..")
            .layer("definition")
            .definedBy("groupwright.definition..")
            .layer("documents")
            .definedBy("groupwright.documents..")
            .layer("workbench")
            .definedBy("groupwright.workbench..")
            .whereLayer("workbench")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("documents")
            .mayOnlyBeAccessedByLayers("workbench")
            .whereLayer("definition")
            .mayOnlyBeAccessedByLayers("documents", "workbench")
            .because("figures must be computable without files, and files readable without windows");

    @ArchTest
    static void packagesOfTheDefinitionKnowOnlyTheseOthers(JavaClasses all) {
        MAY_KNOW.forEach((name, others) -> {
            List<String> known =
                    new ArrayList<>(List.of(DEFINITION + name + "..", "java..", "com.fasterxml.jackson.."));
            others.forEach(other ->
                    known.add(other.equals("drivetrain") ? "groupwright.drivetrain.." : DEFINITION + other + ".."));
            classes()
                    .that()
                    .resideInAPackage(DEFINITION + name + "..")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(known.toArray(String[]::new))
                    .because("records are below figures, figures below the ledger, and nothing below knows files")
                    .check(all);
        });
    }

    /** A new package has to say here what it may know. */
    @ArchTest
    static final ArchRule everyPackageOfTheDefinitionIsListed = classes()
            .that()
            .resideInAPackage("groupwright.definition..")
            .should()
            .resideInAnyPackage(MAY_KNOW.keySet().stream()
                    .map(name -> DEFINITION + name + "..")
                    .toArray(String[]::new))
            .because("each package says which others it may know");

    @ArchTest
    static final ArchRule computationIsPure = noClasses()
            .that()
            .resideInAPackage("groupwright.drivetrain..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "javax.swing..",
                    "java.awt..",
                    "java.io..",
                    "java.nio..",
                    "java.net..",
                    "java.time..",
                    "com.fasterxml..")
            .because("a figure is a function of values; reading, drawing and clocks belong to the outer layers");

    @ArchTest
    static final ArchRule jacksonStaysAtTheEdge = noClasses()
            .that()
            .resideOutsideOfPackages("groupwright.definition.interchange..", "groupwright.workbench.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fasterxml..")
            .because("JSON is one way to write records and answers down");

    @ArchTest
    static final ArchRule htmlReadsTheTreeAlone = classes()
            .that()
            .resideInAPackage("groupwright.documents.html..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "org.commonmark..",
                    "groupwright.documents.html..",
                    "groupwright.documents.charts..",
                    "groupwright.documents.content..",
                    "groupwright.documents.labels..",
                    "groupwright.documents.pages..", // its fonts, which charts are measured with
                    "groupwright.documents.trace..",
                    "groupwright.documents.tree..")
            .because("a renderer shows the finished tree and asks nobody");

    @ArchTest
    static final ArchRule windowsStayInTheWindow = noClasses()
            .that()
            .resideInAnyPackage("groupwright.definition..", "groupwright.workbench.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt..", "com.formdev..")
            .because("a project must open, and a command run, where there is no display");

    @ArchTest
    static final ArchRule theLookKnowsNoOtherPackageOfTheWindow = noClasses()
            .that()
            .resideInAPackage("groupwright.workbench.look..")
            .should()
            .dependOnClassesThat(resideInAPackage("groupwright.workbench..")
                    .and(resideOutsideOfPackage("groupwright.workbench.look..")))
            .because("everything in the window is painted with it");

    @ArchTest
    static final ArchRule componentsKnowOnlyTheLook = noClasses()
            .that()
            .resideInAPackage("groupwright.workbench.components..")
            .should()
            .dependOnClassesThat(resideInAPackage("groupwright.workbench..")
                    .and(resideOutsideOfPackages("groupwright.workbench.look..", "groupwright.workbench.components..")))
            .because("a component shows a value, whichever place it stands in");

    @ArchTest
    static final ArchRule nobodyPrintsPastTheSurroundings = noClasses()
            .should(ACCESS_STANDARD_STREAMS)
            .because("streams are UTF-8 and given to whoever writes to them");

    @ArchTest
    static final ArchRule packagesOfAModuleFormNoCircle =
            slices().matching("groupwright.(*).(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule noClockInside = noClasses()
            .that()
            .resideOutsideOfPackage("groupwright.definition.storage..")
            .should()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .because(
                    "dates come from the project or from the command line, so that the same input gives the same bytes");
}
