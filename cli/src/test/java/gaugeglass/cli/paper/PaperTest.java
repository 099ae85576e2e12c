package gaugeglass.cli.paper;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {
    private static String on(Screen screen, String words) {
        Paper paper = new Paper(screen);
        paper.hanging("Seen  ", words, Style.ALARM);
        return paper.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 57, 80})
    void lines_break_between_words_and_go_on_below_the_first(int width) {
        String text =
                on(new Screen(width, US_ASCII, false), "the float did not move when water was let out ".repeat(9));

        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
        assertThat(text.lines().skip(1))
                .isNotEmpty()
                .allMatch(line -> line.startsWith("      ") && line.charAt(6) != ' ');
        assertThat(text.replaceAll("\\s+", " ").strip())
                .isEqualTo("Seen "
                        + "the float did not move when water was let out "
                                .repeat(9)
                                .strip());
    }

    @Test
    void a_word_longer_than_a_line_is_cut_and_nothing_of_it_is_lost() {
        String word = "x".repeat(95) + "y".repeat(60);

        String text = on(new Screen(80, US_ASCII, false), "before " + word + " after");

        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(text.replaceAll("\\s", "")).isEqualTo("Seenbefore" + word + "after");
    }

    @Test
    void control_characters_are_written_out_and_no_escape_reaches_the_terminal() {
        String text = on(new Screen(80, UTF_8, false), "a\u001b[2Jb\u0007c\u202Ed");

        assertThat(text).isEqualTo("Seen  a\\u001b[2Jb\\u0007c\\u202ed\n");
    }

    @Test
    void letters_are_shown_where_the_screen_has_them_and_written_out_elsewhere() {
        String name = "Caf\u00e9 \u201cNord\u201d \u2013 \ud83d\udd25";

        assertThat(on(new Screen(80, UTF_8, false), name)).isEqualTo("Seen  " + name + "\n");
        assertThat(on(new Screen(80, US_ASCII, false), name)).isEqualTo("Seen  Caf\\u00e9 \"Nord\" - \\ud83d\\udd25\n");
    }

    @Test
    void wide_letters_count_twice() {
        String text = on(new Screen(40, UTF_8, false), "\u6c34".repeat(30));

        assertThat(text.lines()).containsExactly("Seen  " + "\u6c34".repeat(17), "      " + "\u6c34".repeat(13));
    }

    @Test
    void colour_only_where_the_screen_has_it_and_the_words_are_the_same() {
        String plain = on(new Screen(80, US_ASCII, false), "hot and dry");
        String coloured = on(new Screen(80, US_ASCII, true), "hot and dry");

        assertThat(plain).isEqualTo("Seen  hot and dry\n");
        assertThat(coloured).isEqualTo("\u001b[1;31mSeen  hot and dry\u001b[0m\n");
    }

    @Test
    void a_screen_is_never_taken_for_wider_than_eighty_or_narrower_than_forty() {
        assertThat(new Screen(200, US_ASCII, false).width()).isEqualTo(80);
        assertThat(new Screen(7, US_ASCII, false).width()).isEqualTo(40);
    }
}
