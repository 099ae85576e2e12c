package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Urgency;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class EarlierUrgencyTest {
    @Test
    void the_words_for_an_earlier_findings_urgency_are_those_of_the_rulebook() {
        assertThat(InspectionReader.URGENCIES)
                .isEqualTo(Arrays.stream(Urgency.values()).map(Urgency::word).toList());
    }
}
