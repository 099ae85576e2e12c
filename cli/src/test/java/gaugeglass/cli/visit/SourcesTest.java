package gaugeglass.cli.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.text.Mistakes;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which inspections the words of a command line name. */
class SourcesTest {
    @TempDir
    private Path folder;

    private String put(String name, String text) throws Exception {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }

    private static List<Task> all(List<String> words, boolean lines, String input) {
        InputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        List<Task> tasks = new ArrayList<>();
        try (Sources sources = new Sources(words, lines, in)) {
            sources.forEachRemaining(tasks::add);
        }
        return tasks;
    }

    @Test
    void a_folder_gives_everything_below_it_by_path_and_nothing_hidden_or_foreign() throws Exception {
        String b = put("b.yaml", "b");
        String a = put("a/z.YML", "z");
        String c = put("c/deep/x.json", "x");
        put("notes.txt", "no");
        put(".git/x.yaml", "no");
        put("c/.hidden.yaml", "no");

        List<Task> tasks = all(List.of(folder.toString()), false, "");

        assertThat(tasks).extracting(Task::name).containsExactly(a, b, c);
        assertThat(tasks).extracting(task -> task.text().read()).containsExactly("z", "b", "x");
    }

    @Test
    void a_folder_without_inspections_is_a_mistake() {
        List<Task> tasks = all(List.of(folder.toString()), false, "");

        assertThat(tasks).hasSize(1);
        assertThatThrownBy(() -> tasks.get(0).text().read())
                .isInstanceOf(Mistakes.class)
                .hasMessageContaining("there is no inspection in this folder");
    }

    @Test
    void a_file_of_lines_gives_a_task_for_each_line_and_knows_where_it_stands() throws Exception {
        String file = put("visits.jsonl", "{\"a\":1}\n\n \r\n{\"b\":2}\r\nnonsense\n{\"c\":3}");

        List<Task> tasks = all(List.of(file), false, "");

        assertThat(tasks).extracting(Task::linesBefore).containsExactly(0, 3, 4, 5);
        assertThat(tasks.get(1).text().read()).isEqualTo("{\"b\":2}\r");
        assertThatThrownBy(() -> tasks.get(2).text().read()).hasMessageContaining("this line is no JSON object");
        assertThat(tasks.get(3).text().read()).isEqualTo("{\"c\":3}");
    }

    @Test
    void standard_input_is_one_inspection_or_lines_as_asked() {
        assertThat(all(List.of("-"), false, "{}\n{}")).hasSize(1);
        assertThat(all(List.of("-"), true, "{}\n{}")).hasSize(2);
    }

    @Test
    void standard_input_cannot_be_read_twice() {
        List<Task> tasks = all(List.of("-", "-"), false, "x");

        assertThat(tasks.get(0).text().read()).isEqualTo("x");
        assertThatThrownBy(() -> tasks.get(1).text().read()).hasMessageContaining("it was read already");
    }

    @Test
    void a_line_without_end_is_refused_without_being_kept() throws Exception {
        String file = put("endless.jsonl", "{" + " ".repeat(9_000_000) + "}\n{}\n");

        List<Task> tasks = all(List.of(file), false, "");

        assertThat(tasks).hasSize(2);
        assertThatThrownBy(() -> tasks.get(0).text().read()).hasMessageContaining("too long");
        assertThat(tasks.get(1).text().read()).isEqualTo("{}");
    }

    @Test
    void one_inspection_is_told_from_many_by_the_words_alone() throws Exception {
        String file = put("a.yaml", "");

        assertThat(Sources.isOne(List.of(file), false)).isTrue();
        assertThat(Sources.isOne(List.of("-"), false)).isTrue();
        assertThat(Sources.isOne(List.of(file, file), false)).isFalse();
        assertThat(Sources.isOne(List.of(folder.toString()), false)).isFalse();
        assertThat(Sources.isOne(List.of("x.jsonl"), false)).isFalse();
        assertThat(Sources.isOne(List.of("-"), true)).isFalse();
    }
}
