package gaugeglass.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.picture.Picture.Area;
import gaugeglass.cli.picture.Picture.Label;
import gaugeglass.cli.picture.Picture.Stroke;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.observed.BoilerPlate.PlateMark;
import gaugeglass.steam.observed.BoilerPlate.PlateOutput;
import gaugeglass.steam.observed.BoilerPlate.PlateOutputMark;
import gaugeglass.steam.observed.WaterUse.MeterDial;
import gaugeglass.steam.observed.WaterUse.MeterReading;
import gaugeglass.steam.observed.WaterUse.MeterUnit;
import gaugeglass.steam.observed.WaterUse.ReadingHours;
import gaugeglass.steam.observed.WaterUse.SinceBefore;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The meter's log as columns: how high they are, where the lines stand, and where the picture breaks. */
class MakeUpChartTest {
    private static final Rulebook RULEBOOK = Rulebook.load(MakeUpChartTest.class.getClassLoader());

    private static final LocalDate DAY = LocalDate.of(2025, 9, 15);

    private final Observations.Builder log = Observations.of(RULEBOOK.vocabulary(), "B1");
    private int rows;

    private MakeUpChartTest reading(LocalDate on, long gallons, SinceBefore since, long hours) {
        String tag = "r" + ++rows;
        log.tag("meter-reading", tag)
                .seen(new MeterReading(tag, on, Quantity.of(gallons, Unit.GALLON), since))
                .seen(new ReadingHours(tag, Quantity.of(hours, Unit.HOUR)));
        return this;
    }

    private MakeUpChartTest plate() {
        log.seen(new PlateOutputMark(PlateMark.MARKED)).seen(new PlateOutput(Quantity.of(280000, Unit.BTU_PER_HOUR)));
        return this;
    }

    private Optional<Picture> chart() {
        return MakeUpChart.of(
                "c", log.fitted("meter-reading", State.AS_FOUND, rows).build(), RULEBOOK.book());
    }

    private static double height(Area column) {
        return column.points().get(2).y() - column.points().get(0).y();
    }

    private static List<Area> columns(Picture picture) {
        return picture.shapes().stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                // The legend's boxes lie below.
                .filter(area -> area.points().get(2).y() < 200)
                .toList();
    }

    private static List<Stroke> lines(Picture picture) {
        return picture.shapes().stream()
                .filter(shape -> shape instanceof Stroke stroke
                        && stroke.dashed()
                        && stroke.points().get(0).y() < 200)
                .map(Stroke.class::cast)
                .toList();
    }

    private static List<String> labels(Picture picture) {
        return picture.shapes().stream()
                .filter(Label.class::isInstance)
                .map(shape -> ((Label) shape).words())
                .toList();
    }

    private static long jagged(Picture picture) {
        return picture.shapes().stream()
                .filter(shape ->
                        shape instanceof Stroke stroke && stroke.points().size() > 10)
                .count();
    }

    @Test
    void a_column_is_as_high_as_the_gallons_a_day_and_as_wide_as_the_time() {
        Picture picture = plate().reading(DAY, 0, SinceBefore.FIRED, 0)
                .reading(DAY.plusDays(100), 400, SinceBefore.FIRED, 300)
                .reading(DAY.plusDays(300), 600, SinceBefore.UNFIRED, 0)
                .chart()
                .orElseThrow();
        List<Area> columns = columns(picture);

        assertThat(columns).hasSize(2);
        assertThat(height(columns.get(0)) / height(columns.get(1))).isCloseTo(4, Offset.offset(0.001));
        double first = columns.get(0).points().get(1).x()
                - columns.get(0).points().get(0).x();
        double second = columns.get(1).points().get(1).x()
                - columns.get(1).points().get(0).x();
        assertThat(second / first).isCloseTo(2, Offset.offset(0.001));
        assertThat(columns).extracting(Area::black).containsExactly(false, true);
        assertThat(picture.description()).contains("From 2025-09-15 to 2025-12-24: 4.", "to 2026-07-12: 1, unfired.");
    }

    /**
     * Steam of 280,000 Btu/h over 1100 h at 970.1 Btu/lb (IAPWS-IF97, 0 psig) is 317,500 lb; two percent of it, at 8.345
     * lb/gal, are 761 gal, or 3.197 gal a day over 238 days.
     */
    @Test
    void a_line_stands_at_its_share_of_the_steam_that_was_made() {
        Picture picture = plate().reading(DAY, 350, SinceBefore.FIRED, 0)
                .reading(LocalDate.of(2026, 5, 11), 1500, SinceBefore.FIRED, 1100)
                .chart()
                .orElseThrow();
        double column = height(columns(picture).get(0));
        double act = 192 - lines(picture).get(1).points().get(0).y();

        // The column: 1150 gal in 238 days. Drawn from the top down: 5, 2, 1 and 0.5 %.
        assertThat(lines(picture)).hasSize(4);
        assertThat(act / column).isCloseTo(3.197 / (1150.0 / 238), Offset.offset(0.002));
        assertThat(labels(picture)).contains("2 %: stop it at once", "0.5 %: watch");
        assertThat(picture.description()).contains("2 % (stop it at once) 3.2;");
    }

    @Test
    void lines_far_above_every_column_are_told_and_not_drawn() {
        Picture picture = plate().reading(DAY, 350, SinceBefore.FIRED, 0)
                .reading(LocalDate.of(2026, 5, 11), 351, SinceBefore.FIRED, 1100)
                .chart()
                .orElseThrow();

        assertThat(lines(picture)).hasSize(1);
        assertThat(picture.description()).contains("1 % (look for leaks) 1.6, above the picture");
    }

    @Test
    void a_meter_that_was_replaced_or_fell_breaks_the_picture() {
        log.seen(new MeterDial(5, MeterUnit.GALLONS));
        Picture picture = plate().reading(DAY, 350, SinceBefore.FIRED, 0)
                .reading(DAY.plusDays(100), 400, SinceBefore.FIRED, 300)
                .reading(DAY.plusDays(100), 0, SinceBefore.NEW_START, 0)
                .reading(DAY.plusDays(200), 70, SinceBefore.FIRED, 300)
                .reading(DAY.plusDays(300), 60, SinceBefore.FIRED, 300)
                .chart()
                .orElseThrow();

        assertThat(columns(picture)).hasSize(2);
        assertThat(jagged(picture)).isEqualTo(2);
        assertThat(labels(picture)).contains("new count", "fell");
        assertThat(picture.description())
                .contains("On 2025-12-24: the meter was replaced or set")
                .contains("to 2026-07-12: the reading fell, and nothing is known");
    }

    @Test
    void a_dial_that_began_again_is_no_break() {
        log.seen(new MeterDial(3, MeterUnit.GALLONS));
        Picture picture = plate().reading(DAY, 950, SinceBefore.FIRED, 0)
                .reading(DAY.plusDays(100), 50, SinceBefore.FIRED, 300)
                .chart()
                .orElseThrow();

        assertThat(jagged(picture)).isZero();
        assertThat(picture.description()).contains(": 1, the dial having begun again.");
    }

    @Test
    void without_the_output_no_line_is_guessed() {
        Picture picture = reading(DAY, 350, SinceBefore.FIRED, 0)
                .reading(DAY.plusDays(100), 400, SinceBefore.FIRED, 300)
                .chart()
                .orElseThrow();

        assertThat(lines(picture)).isEmpty();
        assertThat(picture.description()).contains("No limit is drawn");
    }

    @Test
    void one_reading_is_no_picture_and_one_that_is_not_legible_is_told() {
        plate().reading(DAY, 350, SinceBefore.FIRED, 0);
        assertThat(chart()).isEmpty();

        log.tag("meter-reading", "wet").unread("meter-reading.row", List.of("wet"), State.AS_FOUND, "not legible");
        reading(DAY.plusDays(100), 400, SinceBefore.FIRED, 300);

        assertThat(chart().orElseThrow().description()).contains("One reading is not known and not drawn.");
    }

    @Test
    void a_log_of_eight_hundred_rows_is_told_shortly() {
        plate();
        for (int day = 0; day < 800; day++) {
            reading(DAY.plusDays(day), day * 2L, SinceBefore.FIRED, 10);
        }
        Picture picture = chart().orElseThrow();

        assertThat(columns(picture)).hasSize(799);
        assertThat(picture.description())
                .contains("over 791 readings: at most 2.")
                .hasSizeLessThan(1200);
    }
}
