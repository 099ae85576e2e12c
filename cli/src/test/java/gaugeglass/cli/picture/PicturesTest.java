package gaugeglass.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is drawn of what was seen, and that nothing is drawn of what was not. */
class PicturesTest {
    private static Quantity psi(String number) {
        return Quantity.of(number, Unit.PSI);
    }

    private static Quantity inches(String number) {
        return Quantity.of(number, Unit.INCH);
    }

    private static Dial.Seen dial(Optional<Unit> unit, Optional<Integer> top) {
        return new Dial.Seen(
                "G-1",
                unit,
                top,
                false,
                "worn off",
                List.of(new Dial.Reading("with steam up", psi("7.5"))),
                List.of(
                        new Dial.Range("operating control P-1", Optional.of(psi("0.5")), Optional.of(psi("2")), false),
                        new Dial.Range("high limit P-2", Optional.empty(), Optional.of(psi("10")), true)));
    }

    private static List<String> labels(Picture picture) {
        return picture.shapes().stream()
                .filter(Picture.Label.class::isInstance)
                .map(shape -> ((Picture.Label) shape).words())
                .toList();
    }

    @Test
    void a_dial_shows_its_scale_the_working_range_and_the_reading() {
        Picture picture = Dial.of("d", dial(Optional.of(Unit.PSI), Optional.of(30)));

        assertThat(labels(picture)).contains("0", "5", "10", "30", "psi");
        assertThat(picture.description())
                .contains("0 to 30 psi")
                .contains("operating control P-1 lets the burner start at 0.5 psi and stops it at 2 psi")
                .contains("high limit P-2 stops it at 10 psi")
                .contains("7.5 psi with steam up");
    }

    /** A quarter of the scale is a quarter of three quarters of a circle: 67.5 degrees past the start at -135. */
    @Test
    void the_pointer_stands_where_the_reading_is_on_the_scale() {
        Picture picture = Dial.of("d", dial(Optional.of(Unit.PSI), Optional.of(30)));
        Picture.Stroke pointer = picture.shapes().stream()
                .filter(shape -> shape instanceof Picture.Stroke stroke && stroke.width() == 2.5)
                .map(Picture.Stroke.class::cast)
                .findFirst()
                .orElseThrow();
        Picture.Point from = pointer.points().get(0);
        Picture.Point to = pointer.points().get(1);

        assertThat(Math.toDegrees(Math.atan2(to.x() - from.x(), from.y() - to.y())))
                .isCloseTo(-67.5, org.assertj.core.data.Offset.offset(0.01));
    }

    @Test
    void settings_in_another_unit_are_laid_on_the_dials_own_scale() {
        Dial.Seen ounces = dial(Optional.of(Unit.OUNCE_PER_SQUARE_INCH), Optional.of(120));

        // 7.5 psi are 120 ounces an inch: the end of the scale.
        assertThat(Dial.of("d", ounces).shapes())
                .anySatisfy(shape -> assertThat(shape).isInstanceOfSatisfying(Picture.Stroke.class, stroke -> {
                    assertThat(stroke.width()).isEqualTo(2.5);
                    Picture.Point from = stroke.points().get(0);
                    Picture.Point to = stroke.points().get(1);
                    assertThat(Math.toDegrees(Math.atan2(to.x() - from.x(), from.y() - to.y())))
                            .isCloseTo(135, org.assertj.core.data.Offset.offset(0.01));
                }));
    }

    @Test
    void a_setting_beyond_the_scale_is_told_and_not_drawn_on_it() {
        Dial.Seen small = dial(Optional.of(Unit.PSI), Optional.of(8));
        Dial.Seen large = dial(Optional.of(Unit.PSI), Optional.of(10));

        assertThat(Dial.of("d", small).description()).contains("stops it at 10 psi. That lies beyond this scale.");
        assertThat(Dial.of("d", large).description()).doesNotContain("beyond");
        assertThat(triangles(Dial.of("d", small))).isZero();
        assertThat(triangles(Dial.of("d", large))).isEqualTo(1);
    }

    private static long triangles(Picture picture) {
        return picture.shapes().stream()
                .filter(shape ->
                        shape instanceof Picture.Area area && area.points().size() == 3)
                .count();
    }

    @Test
    void without_the_printed_unit_no_scale_is_guessed() {
        for (Dial.Seen seen :
                List.of(dial(Optional.empty(), Optional.of(30)), dial(Optional.of(Unit.PSI), Optional.empty()))) {
            Picture picture = Dial.of("d", seen);

            assertThat(labels(picture)).doesNotContain("0", "30", "psi").contains("No scale drawn:");
            assertThat(picture.description()).contains("No scale is drawn", "not read (worn off)", "7.5 psi");
            assertThat(picture.shapes()).hasSize(3);
        }
    }

    @Test
    void a_glass_shows_the_proven_and_the_apparent_level_and_every_mark() {
        Picture picture = Glass.of(
                "g",
                new Glass.Seen(
                        Optional.of(inches("4")),
                        "",
                        Optional.of(inches("6")),
                        List.of(new Glass.Level("cutoff A", inches("1")), new Glass.Level("feeder", inches("-2"))),
                        List.of("The mark of cutoff B could not be read (lagged over).")));

        assertThat(labels(picture)).contains("seemed to stand", "proven", "cutoff A 1 in", "feeder -2 in");
        assertThat(picture.description())
                .contains("Water seemed to stand 6 in. Water proven 4 in.", "Cutoff A 1 in.", "Feeder -2 in.")
                .contains("cutoff B could not be read (lagged over)");
    }

    @Test
    void water_that_was_not_proven_is_not_drawn() {
        Picture picture = Glass.of(
                "g",
                new Glass.Seen(
                        Optional.empty(), "glass not blown down", Optional.of(inches("6")), List.of(), List.of()));

        assertThat(labels(picture)).doesNotContain("proven");
        assertThat(picture.shapes())
                .noneMatch(shape -> shape instanceof Picture.Stroke stroke
                        && stroke.width() == 0.6
                        && stroke.points().get(0).x() == 151);
        assertThat(picture.description()).contains("not proven (glass not blown down)");
    }

    @Test
    void words_at_one_height_do_not_lie_on_one_another() {
        Picture picture = Glass.of(
                "g",
                new Glass.Seen(
                        Optional.of(inches("4")),
                        "",
                        Optional.of(inches("4")),
                        List.of(
                                new Glass.Level("a", inches("1")),
                                new Glass.Level("b", inches("1")),
                                new Glass.Level("c", inches("1")),
                                new Glass.Level("d", inches("0"))),
                        List.of()));
        List<Double> heights = picture.shapes().stream()
                .filter(shape -> shape instanceof Picture.Label label && label.from() == Picture.Anchor.START)
                .map(shape -> ((Picture.Label) shape).at().y())
                .sorted()
                .toList();

        assertThat(heights).hasSize(4);
        for (int i = 1; i < heights.size(); i++) {
            assertThat(heights.get(i) - heights.get(i - 1)).isGreaterThanOrEqualTo(12);
        }
    }

    /** A picture that reads an observation under a name it no longer has would silently go missing. */
    @Test
    void the_observations_that_pictures_are_drawn_from_are_in_the_vocabulary() {
        Vocabulary vocabulary =
                Rulebook.load(PicturesTest.class.getClassLoader()).vocabulary();
        List<String> groups =
                vocabulary.items().stream().map(item -> item.group()).distinct().toList();

        assertThat(groups).contains("level", "cutoff", "feeder");
        assertThat(PicturesSeen.ITEMS.stream()
                        .filter(id -> groups.contains(id.substring(0, id.indexOf('.'))))
                        .filter(id -> vocabulary.item(id).isEmpty()))
                .isEmpty();
    }
}
