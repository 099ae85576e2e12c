package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What must hold in tables whoever typed them. */
class TablesTest {
    private static final Path TABLES = Path.of("src/main/resources/gaugeglass/steam/reckon");
    private static final Path CODE = Path.of("src/main/java/gaugeglass/steam/reckon");

    /** With one total drop, what a main carries goes with the root of its length: the check built into the ASHVE table. */
    @Test
    void mains_differ_by_the_root_of_their_lengths() {
        for (Table.Row row : Table.read("mains.csv").rows()) {
            double at100 = number(row, "100");
            for (int length = 200; length <= 400; length += 100) {
                double expected = at100 / Math.sqrt(length / 100.0);
                assertThat(number(row, String.valueOf(length)))
                        .as("%s in at %s ft", row.text("size"), length)
                        .isCloseTo(expected, within(0.51 + expected * 0.003));
            }
        }
    }

    /** ASHVE Guide 1955, table 5 (read): a main's 1 oz and 2 oz columns are the 1930 table's 200 and 100 ft, rounded. */
    @Test
    void a_later_edition_agrees_with_the_mains() {
        Map<String, int[]> later = new HashMap<>();
        later.put("1", new int[] {79, 56});
        later.put("1 1/4", new int[] {173, 122});
        later.put("1 1/2", new int[] {269, 190});
        later.put("2", new int[] {546, 386});
        later.put("2 1/2", new int[] {898, 635});
        later.put("3", new int[] {1650, 1160});
        later.put("3 1/2", new int[] {2460, 1740});
        later.put("4", new int[] {3480, 2460});
        later.put("5", new int[] {6430, 4550});
        later.put("6", new int[] {10550, 7460});
        later.put("8", new int[] {21970, 15500});
        later.put("10", new int[] {40100, 28300});
        later.put("12", new int[] {64300, 45500});
        for (Table.Row row : Table.read("mains.csv").rows()) {
            int[] printed = later.get(row.text("size"));
            assertThat(number(row, "100")).isCloseTo(printed[0], within(printed[0] * 0.004));
            assertThat(number(row, "200")).isCloseTo(printed[1], within(printed[1] * 0.004));
        }
    }

    @Test
    void bigger_pipe_carries_more_and_is_wider() {
        for (String file : List.of("mains.csv", "branches.csv", "pipes.csv")) {
            Table table = Table.read(file);
            for (String column : table.columns()) {
                rises(
                        file + " " + column,
                        table.rows().stream()
                                .filter(row -> !row.isEmpty(column))
                                .toList(),
                        column);
            }
        }
        for (PipeSize size : PipeSize.all()) {
            assertThat(size.inside()).isLessThan(size.outside());
            // Schedule 40 is made to the nominal size outside from 14 in on, and below that is wider than its name.
            assertThat(size.outside()).isGreaterThan(size.nominal());
        }
    }

    @Test
    void taller_and_deeper_radiators_have_more_surface() {
        Map<String, List<Table.Row>> byPattern = new HashMap<>();
        for (Table.Row row : Table.read("radiators.csv").rows()) {
            byPattern
                    .computeIfAbsent(row.text("pattern"), p -> new ArrayList<>())
                    .add(row);
        }
        byPattern.forEach((pattern, rows) -> {
            rises(pattern, rows, "height");
            rises(pattern, rows, "edr");
        });
        for (String height : List.of("20", "23", "26", "32", "38")) {
            for (int tubes = 3; tubes < 6; tubes++) {
                assertThat(area(tubes + "-tube", height)).isLessThan(area((tubes + 1) + "-tube", height));
            }
        }
        for (String height : List.of("26", "32", "38")) {
            for (int columns = 1; columns < 4; columns++) {
                assertThat(area(columns + "-column", height)).isLessThan(area((columns + 1) + "-column", height));
            }
        }
    }

    @Test
    void efficiency_falls_with_oxygen_and_with_the_rise() {
        for (int row = 0; row <= EfficiencyTable.last(); row++) {
            for (int column = 0; column < EfficiencyTable.RISES.size(); column++) {
                if (row > 0) {
                    assertThat(EfficiencyTable.cell(row, column)).isLessThan(EfficiencyTable.cell(row - 1, column));
                }
                if (column > 0) {
                    assertThat(EfficiencyTable.cell(row, column)).isLessThan(EfficiencyTable.cell(row, column - 1));
                }
            }
        }
    }

    @Test
    void every_table_says_where_it_is_from_and_every_source_and_constant_is_used() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path folder : List.of(TABLES, CODE)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.forEach(file -> {
                    try {
                        String text = Files.readString(file);
                        if (file.toString().endsWith(".csv")) {
                            assertThat(text).as("%s", file).startsWith("# ");
                        }
                        all.append(text);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
            }
        }
        String text = all.toString();
        // Names put together from a choice: trap-doe, firetube-surface.
        Set<String> composed = new HashSet<>(
                List.of("trap-doe", "trap-napier", "trap-utility", "firetube-surface", "watertube-surface"));
        for (Constant constant : Constant.all()) {
            assertThat(composed.contains(constant.id()) || text.contains("\"" + constant.id() + "\""))
                    .as("constant %s is used", constant.id())
                    .isTrue();
        }
        for (String source : Table.read("sources.csv").column("id")) {
            assertThat(text.contains("\"" + source + "\"") || text.contains("," + source + ","))
                    .as("source %s is used", source)
                    .isTrue();
        }
    }

    /** What follows from other constants must. */
    @Test
    void constants_that_follow_from_others_do() {
        assertThat(value("pi")).isCloseTo(Math.PI, within(1e-14));
        assertThat(value("nitrogen")).isCloseTo(1 - value("combustion-oxygen") / 100, within(1e-12));
        // 5.670374419e-8 W/m2 K4 in Btu/h ft2 and hundreds of degrees Rankine.
        double watts = 0.3048 * 0.3048 * 3600 / 1055.05585262;
        assertThat(value("stefan-boltzmann"))
                .isCloseTo(5.670374419e-8 * watts * Math.pow(100 * 5.0 / 9, 4), within(5e-6));
        // Napier: lb/s = psia x in2 / 70.
        assertThat(value("trap-napier")).isCloseTo(3600 / 70.0 * Math.PI / 4, within(0.005));
        // 34.5 lb/h from and at 212 F is one steam horsepower of 33,475 Btu/h (US DOE Steam Tip Sheet 16, read).
        double latent = Saturation.latentHeat(Quantity.of(0, Unit.PSI), Saturation.STANDARD_ATMOSPHERE)
                .in(Unit.BTU_PER_POUND)
                .doubleValue();
        assertThat(34.5 * latent).isCloseTo(33_475, within(15.0));
    }

    private static void rises(String what, List<Table.Row> rows, String column) {
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i).number(column))
                    .as("%s", what)
                    .isGreaterThan(rows.get(i - 1).number(column));
        }
    }

    private static Quantity area(String pattern, String height) {
        return Radiator.parse("1 x " + pattern + " " + height + " in").get(0).each();
    }

    private static double value(String constant) {
        return Constant.of(constant)
                .value()
                .toBigDecimal(java.math.MathContext.DECIMAL64)
                .doubleValue();
    }

    private static double number(Table.Row row, String column) {
        return row.number(column).toBigDecimal(java.math.MathContext.DECIMAL64).doubleValue();
    }
}
