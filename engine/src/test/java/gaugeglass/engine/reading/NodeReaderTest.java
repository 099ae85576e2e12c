package gaugeglass.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NodeReaderTest {
    private static Node.Scalar under(String key, String text) {
        List<Mistake> mistakes = new ArrayList<>();
        Node node = NodeReader.read("f", text, mistakes);
        assertThat(mistakes).isEmpty();
        return (Node.Scalar) ((Node.Fields) node).get(key).orElseThrow();
    }

    @Test
    void a_byte_order_mark_is_skipped() {
        assertThat(under("a", "\uFEFFa: 1\n").text()).isEqualTo("1");
        assertThat(under("a", "\uFEFF{\"a\": 1}").text()).isEqualTo("1");
    }

    @Test
    void lines_may_end_as_they_do_on_windows() {
        Node.Scalar scalar = under("b", "a: 1\r\nb: two words\r\n");
        assertThat(scalar.text()).isEqualTo("two words");
        assertThat(scalar.line()).isEqualTo(2);
        assertThat(scalar.column()).isEqualTo(4);
    }

    @Test
    void curly_quotes_around_a_value_or_a_key_are_taken_off() {
        assertThat(under("a", "a: \u201Ctwo words\u201D\n").text()).isEqualTo("two words");
        assertThat(under("a", "\u2018a\u2019: b\n").text()).isEqualTo("b");
    }

    @Test
    void curly_quotes_inside_a_value_stay() {
        assertThat(under("a", "a: the \u201Cold\u201D one\n").text()).isEqualTo("the \u201Cold\u201D one");
    }

    @Test
    void no_break_spaces_count_as_spaces() {
        assertThat(under("b", "a:\u00A01\n\u00A0\n\u202F\nb:\u00A02\u2007psi\n").text())
                .isEqualTo("2 psi");
    }

    @Test
    void values_stay_as_they_were_written() {
        for (String written :
                List.of("1.50", "0x10", "1_000", "2026-09-14", "08:10", "true", "yes", "010", "1e3", ".5")) {
            assertThat(under("a", "a: " + written + "\n").text()).isEqualTo(written);
        }
        assertThat(under("a", "{\"a\": 1.50}").text()).isEqualTo("1.50");
    }

    @Test
    void a_key_with_nothing_after_it_is_blank_and_a_quoted_nothing_is_not() {
        for (String blank : List.of("a:", "a: ~", "a: null", "a: # later", "{\"a\": null}")) {
            assertThat(under("a", blank).isBlank()).as(blank).isTrue();
        }
        for (String empty : List.of("a: \"\"", "a: ''", "{\"a\": \"\"}", "a: \"null\"")) {
            assertThat(under("a", empty).isBlank()).as(empty).isFalse();
        }
    }

    @Test
    void a_text_beyond_the_limit_is_refused_with_its_size() {
        assertThatThrownBy(() -> NodeReader.read("f", "a".repeat(NodeReader.LONGEST + 1), new ArrayList<>()))
                .isInstanceOf(Mistakes.class)
                .hasMessageContaining("too long: 8388609 characters");
    }

    @Test
    void a_doubled_key_is_named_and_reading_goes_on() {
        List<Mistake> mistakes = new ArrayList<>();
        NodeReader.read("f", "a: 1\nb: 2\na: 3\nb: 4\n", mistakes);
        assertThat(mistakes).extracting(Mistake::line).containsExactly(3, 4);
    }

    /** Whatever a disk or a cat on the keyboard makes of a file, it is read or refused in words. */
    @Test
    void a_spoiled_text_is_read_or_refused_and_never_ends_otherwise() {
        String sound = "format: 1\nsite: {id: a, \"name\": 'b'}\nlist:\n  - one\n  - two: [3, 4]\ntext: |\n  a\n  b\n";
        String json = "{\"format\": 1, \"site\": {\"id\": \"a\"}, \"list\": [1, {\"b\": null}]}";
        String pieces = "\t\n :-#&*!|>'\"%@`{}[],?<\u0000\u001B\u00A0\u2028\uFEFF\uD83D\uDD27\uD800\\x";
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(i % 3 == 0 ? json : sound);
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                int at = random.nextInt(text.length());
                char c = pieces.charAt(random.nextInt(pieces.length()));
                switch (random.nextInt(3)) {
                    case 0 -> text.insert(at, c);
                    case 1 -> text.setCharAt(at, c);
                    default -> text.delete(at, Math.min(text.length(), at + random.nextInt(6)));
                }
            }
            try {
                assertThat(NodeReader.read("f", text.toString(), new ArrayList<>()))
                        .isNotNull();
            } catch (Mistakes e) {
                assertThat(e.all()).isNotEmpty();
            }
        }
    }
}
