package gaugeglass.checklists;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may depend on whom in the module that asks, and why. */
@AnalyzeClasses(packages = "gaugeglass.checklists", importOptions = DoNotIncludeTests.class)
class ChecklistsArchitectureTest {
    @ArchTest
    static final ArchRule asking_does_not_judge = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..")
            .because("answers become observations; what they mean is judged in one place, the engine");

    @ArchTest
    static final ArchRule files_are_read_by_the_engine = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..", "org.yaml..")
            .because("what a person writes is read strictly, in one way, in one place");

    @ArchTest
    static final ArchRule asking_knows_no_terminal = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gaugeglass.cli..")
            .because("the same checklist is asked on a terminal, on paper and by other programs");

    @ArchTest
    static final ArchRule packages_have_no_cycles = slices().matching("gaugeglass.checklists.(*)..")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true)
            .because("packages in a ring are one package that takes longer to read");
}
