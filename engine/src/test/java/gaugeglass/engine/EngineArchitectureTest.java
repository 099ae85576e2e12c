package gaugeglass.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** Who may depend on whom inside the engine, and why. */
@AnalyzeClasses(packages = "gaugeglass.engine", importOptions = DoNotIncludeTests.class)
class EngineArchitectureTest {
    private static final String[] DROOLS = {"org.drools..", "org.kie.."};

    @ArchTest
    static final ArchRule drools_stays_in_two_packages = noClasses()
            .that()
            .resideOutsideOfPackages("gaugeglass.engine.drools..", "gaugeglass.engine.build..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(DROOLS)
            .because("another release of the rule engine, or another rule engine, must be a"
                    + " change of one package at run time and one at build time");

    @ArchTest
    static final ArchRule judging_needs_nothing_of_the_build = noClasses()
            .that()
            .resideOutsideOfPackage("gaugeglass.engine.build..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gaugeglass.engine.build..")
            .because("what compiles rules is not on the run-time class path; a class that"
                    + " leans on it would fail only on the user's machine");

    @ArchTest
    static final ArchRule jackson_stays_in_the_reading_package = noClasses()
            .that()
            .resideOutsideOfPackage("gaugeglass.engine.reading..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..", "org.yaml..", "de.siegmar..")
            .because("what a person writes is read strictly, in one way, in one place; a"
                    + " second reader would differ in what it forgives");

    @ArchTest
    static final ArchRule the_parts_do_not_know_the_whole = noClasses()
            .that()
            .resideInAPackage("gaugeglass.engine.*..")
            .and()
            .resideOutsideOfPackage("gaugeglass.engine.build..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("gaugeglass.engine")
            .because("the public face is laid over the parts; a part that needs it could not be read or tested"
                    + " by itself. Building stands above the face: it ends by loading what it built");

    @ArchTest
    static final ArchRule packages_have_no_cycles = slices().matching("gaugeglass.engine.(*)..")
            .should()
            .beFreeOfCycles()
            .because("packages in a ring are one package that takes longer to read");

    @ArchTest
    static final ArchRule the_engine_knows_no_module_above_it = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("gaugeglass.steam..", "gaugeglass.checklists..", "gaugeglass.cli..", "com.hummeling..")
            .because("the engine knows no trade, and is tested on a toy one");

    /** Nulls are unknown to every package, the public face among them. */
    @ArchTest
    static void every_package_is_null_marked(JavaClasses classes) {
        assertThat(classes.stream()
                        .map(JavaClass::getPackage)
                        .distinct()
                        .filter(p -> p.tryGetPackageInfo()
                                .filter(i -> i.isAnnotatedWith(NullMarked.class))
                                .isEmpty())
                        .map(p -> p.getName())
                        .sorted())
                .as("packages without @NullMarked, because no null crosses a method boundary")
                .isEmpty();
    }

    /** The list is the promise; a type that became public by accident is not. */
    @ArchTest
    static void the_public_types_are_those_of_the_list(JavaClasses classes) throws IOException {
        List<String> listed;
        try (Stream<String> lines = Files.lines(Path.of("src/test/resources/public-types.txt"))) {
            listed = lines.filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        }
        List<String> found = classes.stream()
                .filter(c -> c.getPackageName().equals("gaugeglass.engine"))
                .filter(c -> c.isTopLevelClass())
                .filter(c -> c.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getSimpleName)
                .sorted()
                .toList();
        assertThat(found)
                .as("public types of gaugeglass.engine, because others are written against"
                        + " them: adding or removing one is a decision")
                .isEqualTo(listed);
    }

    /** No word of the trade: where it turns up, knowledge of the trade is not far. */
    @ArchTest
    static void the_trade_is_not_named(JavaClasses classes) throws IOException {
        // Put together, as this file is searched too.
        String word = "boil" + "er";
        List<Path> files;
        try (Stream<Path> tree = Files.walk(Path.of("src"))) {
            files = tree.filter(Files::isRegularFile).toList();
        }
        assertThat(files).as("sources of the engine").hasSizeGreaterThan(10);
        assertThat(files.stream()
                        .filter(file -> file.toString().toLowerCase(Locale.ROOT).contains(word)
                                || text(file).toLowerCase(Locale.ROOT).contains(word)))
                .as("files that say '" + word + "', because the engine knows no trade")
                .isEmpty();
    }

    private static String text(Path file) {
        try {
            // Latin 1 reads any bytes, and the word is plain ASCII.
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
