package gaugeglass.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.text.Mistake;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables from a spreadsheet, and where in them each cell stands. */
class TableReaderTest {
    private static String places(String text) {
        List<Mistake> mistakes = new ArrayList<>();
        String rows = TableReader.read("t.csv", text, mistakes).stream()
                .map(row -> row.fields().all().entrySet().stream()
                        .map(one -> one.getKey() + "=" + one.getValue().value().line() + ":"
                                + one.getValue().value().column())
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining("; "));
        assertThat(mistakes).isEmpty();
        return rows;
    }

    /** By hand: counted with a finger. N is a line feed, R a carriage return, Q a quotation mark. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    a,bNone,two                | a=2:1 b=2:5
                    a,bN1,2N3,44               | a=2:1 b=2:3; a=3:1 b=3:3
                    a,bRN1,2RN3,44RN           | a=2:1 b=2:3; a=3:1 b=3:3
                    a,bR1,2R3,44               | a=2:1 b=2:3; a=3:1 b=3:3
                    a,bNN1,2                   | a=3:1 b=3:3
                    a;bN1,5;2                  | a=2:1 b=2:5
                    a,b,cNQx,QQ,yQ,2,3         | a=2:1 b=2:10 c=2:12
                    a,bNQxNyQ,2N3,4            | a=2:1 b=3:4; a=4:1 b=4:3
                    a,b,cN1,,3                 | a=2:1 c=2:4
                    a,bNx Qin QN3,4            | a=2:1; a=3:1 b=3:3
                    a,bN1,                     | a=2:1
                    """)
    void each_cell_knows_its_line_and_its_character(String written, String places) {
        String text = written.replace('N', '\n').replace('R', '\r').replace('Q', '"');

        assertThat(places(text)).isEqualTo(places);
    }

    @Test
    void what_is_wrong_with_a_column_is_told_at_its_heading() {
        List<Mistake> mistakes = new ArrayList<>();

        List<Form> rows = TableReader.read("t.csv", "\uFEFFlimit,valu,limit\nx,2,3,4\n", mistakes);
        rows.get(0).text("limit");
        rows.get(0).close();

        assertThat(mistakes.stream().map(Mistake::message).map(one -> one.replaceAll(";.*", "")))
                .containsExactly(
                        "t.csv:1:12: column C: two columns are called \"limit\"",
                        "t.csv:2:7: column D: \"4\" stands in a column without a heading",
                        "t.csv:1:7: \"valu\" is not a key here");
    }
}
