package gaugeglass.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Observations;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What is on the class path when rules run: this module's own, as a user has it. */
class RunTimeClassPathTest {
    @Test
    void what_compiles_rules_is_not_there() {
        for (String name : new String[] {
            "org.drools.compiler.kie.builder.impl.KieServicesImpl",
            "org.drools.model.codegen.ExecutableModelProject",
            "org.drools.drl.parser.DrlParser",
            "org.eclipse.jdt.core.compiler.CompilationProgress",
            "com.github.javaparser.JavaParser",
            "com.fasterxml.jackson.databind.ObjectMapper"
        }) {
            assertThatThrownBy(() -> Class.forName(name))
                    .as(name + " costs start-up time, and can crash the making of an archive")
                    .isInstanceOf(ClassNotFoundException.class);
        }
    }

    @Test
    void the_rulebook_is_loaded_and_judges_without_it() {
        Rulebook rulebook = Rulebook.load(getClass().getClassLoader());
        Observations nothingSeen = Observations.of(rulebook.vocabulary(), "one").build();

        assertThat(rulebook.assess(nothingSeen, LocalDate.of(2026, 9, 1)).outcomes())
                .isNotEmpty();
    }
}
