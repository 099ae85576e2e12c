package gaugeglass.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.never;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.Calendar;
import java.util.Date;
import java.util.GregorianCalendar;
import java.util.Set;

/** What holds for the whole house: all modules are on the class path of this one. */
@AnalyzeClasses(packages = "gaugeglass", importOptions = DoNotIncludeTests.class)
class HouseArchitectureTest {
    @ArchTest
    static final ArchRule nothing_points_back = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("gaugeglass..")
            .withOptionalLayers(true)
            .layer("engine")
            .definedBy("gaugeglass.engine..")
            .layer("rules")
            .definedBy("gaugeglass.steam..")
            .layer("checklists")
            .definedBy("gaugeglass.checklists..")
            .layer("cli")
            .definedBy("gaugeglass.cli..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("checklists")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("rules")
            .mayOnlyBeAccessedByLayers("checklists", "cli")
            .ensureAllClassesAreContainedInArchitecture()
            .because("each module must be of use without those above it");

    @ArchTest
    static final ArchRule only_the_entry_reads_the_clock = classes()
            .that()
            .doNotHaveFullyQualifiedName("gaugeglass.cli.Main")
            .should(never(accessTargetWhere(describe("the clock is read", HouseArchitectureTest::readsTheClock))))
            .because("a visit judged again next year must give the same answer; dates come in as arguments");

    @ArchTest
    static final ArchRule only_the_entry_touches_the_standard_streams = classes()
            .that()
            .doNotHaveFullyQualifiedName("gaugeglass.cli.Main")
            .should(never(ACCESS_STANDARD_STREAMS))
            .because("what is printed where is decided once, and everything else can be tested without"
                    + " catching it");

    @ArchTest
    static final ArchRule only_the_command_line_knows_terminals = noClasses()
            .that()
            .resideOutsideOfPackage("gaugeglass.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("picocli..", "org.jline..")
            .because("an embedder of the engine gets no command line with it");

    @ArchTest
    static final ArchRule the_command_line_knows_no_rule_engine = noClasses()
            .that()
            .resideInAPackage("gaugeglass.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..", "com.fasterxml.jackson..", "org.yaml..")
            .because("judging and reading are the engine's; the command line asks it");

    @ArchTest
    static final ArchRule only_pages_know_templates_and_paper = noClasses()
            .that()
            .resideOutsideOfPackage("gaugeglass.cli.printed..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gg.jte..", "com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..")
            .because("templates and paper are megabytes that nobody waits for who only wants a verdict");

    @ArchTest
    static final ArchRule one_place_writes_tables_for_spreadsheets = noClasses()
            .that()
            .resideInAPackage("gaugeglass.cli..")
            .and()
            .resideOutsideOfPackage("gaugeglass.cli.table..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("de.siegmar..")
            .because("a cell that a spreadsheet takes for a formula is made harmless there, and nowhere else");

    @ArchTest
    static final ArchRule judging_knows_no_pages = noClasses()
            .that()
            .resideInAnyPackage(
                    "gaugeglass.cli.report..",
                    "gaugeglass.cli.visit..",
                    "gaugeglass.cli.paper..",
                    "gaugeglass.cli.walk..")
            .or()
            .haveNameMatching("gaugeglass\\.cli\\.command\\.(Commands|QuickLine|Assess.*|Check.*|Shell|Code|As)")
            .or()
            .haveFullyQualifiedName("gaugeglass.cli.Main")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gaugeglass.cli.printed..", "gaugeglass.cli.picture..", "gaugeglass.cli.fleet..")
            .because("what a cold assess touches must not load them");

    @ArchTest
    static final ArchRule packages_have_no_cycles = slices().matching("gaugeglass.cli.(*)..")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true)
            .because("packages in a ring are one package that takes longer to read");

    private static final Set<String> CLOCK_METHODS =
            Set.of("now", "currentTimeMillis", "nanoTime", "systemUTC", "systemDefaultZone", "system", "getInstance");

    private static boolean readsTheClock(JavaAccess<?> access) {
        var target = access.getTarget();
        var owner = target.getOwner();
        boolean knowsTime = owner.getPackageName().startsWith("java.time")
                || owner.isEquivalentTo(System.class)
                || owner.isEquivalentTo(Clock.class)
                || owner.isEquivalentTo(Calendar.class);
        boolean isNow = access.getTarget().getName().equals("<init>")
                && (owner.isEquivalentTo(Date.class) || owner.isEquivalentTo(GregorianCalendar.class));
        return isNow || knowsTime && CLOCK_METHODS.contains(target.getName());
    }
}
