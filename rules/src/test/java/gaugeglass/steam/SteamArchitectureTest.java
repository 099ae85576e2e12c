package gaugeglass.steam;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;

/** Who may depend on whom in the trade's module, and why. */
@AnalyzeClasses(packages = "gaugeglass.steam", importOptions = DoNotIncludeTests.class)
class SteamArchitectureTest {
    private static final DescribedPredicate<JavaClass> WRITTEN_BY_HAND =
            DescribedPredicate.describe("were written by hand", SteamArchitectureTest::hasSource);

    @ArchTest
    static final ArchRule drools_stays_in_generated_classes = noClasses()
            .that(WRITTEN_BY_HAND)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..")
            .because("a fact or a reckoning must be readable and testable without a rule engine");

    @ArchTest
    static final ArchRule files_are_read_by_the_engine = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..", "org.yaml..")
            .because("what a person writes is read strictly, in one way, in one place");

    @ArchTest
    static final ArchRule the_trade_knows_no_module_above_it = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gaugeglass.checklists..", "gaugeglass.cli..")
            .because("the rules judge what was seen, however it was asked or is printed");

    @ArchTest
    static final ArchRule packages_have_no_cycles = slices().matching("gaugeglass.steam.(*)..")
            .should()
            .beFreeOfCycles()
            .because("packages in a ring are one package that takes longer to read");

    @ArchTest
    static final ArchRule the_steam_table_has_one_door = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("gaugeglass.steam.reckon.SteamTable")
            .and()
            .doNotHaveFullyQualifiedName("gaugeglass.steam.reckon.SteamTable$Loaded")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.hummeling..")
            .because("its doubles are rounded at that door, and it is loaded only when asked");

    /** A class generated from rules has no Java source beside those of this module. */
    private static boolean hasSource(JavaClass type) {
        String outermost = type.getName().replaceFirst("\\$.*", "");
        return Files.exists(Path.of("src/main/java", outermost.replace('.', '/') + ".java"));
    }
}
