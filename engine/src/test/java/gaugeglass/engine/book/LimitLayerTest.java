package gaugeglass.engine.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.book.Limit.Safer;
import gaugeglass.engine.text.Mistakes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitLayerTest {
    private static final Map<String, Limit> TABLE = table(
            limit("oven.most-heat", "250 F", "temperature", Safer.LOWER, Basis.STANDARD, "", ""),
            limit("oven.least-gap", "18 in", "length", Safer.HIGHER, Basis.STANDARD, "", ""),
            limit("oven.life", "10 years", "period", Safer.LOWER, Basis.PRACTICE, "5 years", "15 years"),
            limit("oven.trays", "4", "count", Safer.NEITHER, Basis.STANDARD, "", ""));

    private static Map<String, Limit> table(Limit... limits) {
        Map<String, Limit> table = new LinkedHashMap<>();
        for (Limit limit : limits) {
            table.put(limit.id(), limit);
        }
        return table;
    }

    private static Limit limit(
            String id, String value, String measures, Safer safer, Basis basis, String least, String most) {
        return new Limit(
                id,
                BookReader.value(value, measures),
                value,
                "a limit",
                safer,
                least,
                most,
                "1",
                basis,
                List.of(),
                "",
                "standard practice");
    }

    private static LimitLayer layer(String level, String id, String value) {
        return layer("the shop", level, id, value);
    }

    private static LimitLayer layer(String name, String level, String id, String value) {
        return LimitLayer.read(
                "shop.yaml", "layer: " + name + "\nlevel: " + level + "\nlimits:\n  " + id + ": " + value + "\n");
    }

    @ParameterizedTest
    @CsvSource({
        "oven.most-heat, 240 F",
        "oven.most-heat, 121.1 C",
        "oven.most-heat, 250 F",
        "oven.least-gap, 24 in",
        "oven.least-gap, 2 ft",
        "oven.life, 5 years",
        "oven.life, 15 years",
        "oven.life, 96 months",
        "oven.trays, 4"
    })
    void a_more_cautious_value_is_taken_and_names_its_layer(String id, String value) {
        Limit laid =
                LimitLayer.over(TABLE, List.of(layer("company", id, value))).get(id);
        assertThat(laid.written()).isEqualTo(value);
        assertThat(laid.layer()).isEqualTo("the shop");
    }

    @ParameterizedTest
    @CsvSource({
        "oven.most-heat, 250.01 F, less cautious",
        "oven.most-heat, 122 C, less cautious",
        "oven.least-gap, 17.9 in, less cautious",
        "oven.trays, 5, less cautious",
        "oven.trays, 3, less cautious",
        "oven.life, 16 years, outside the span",
        "oven.life, 4 years, outside the span",
        "oven.most-heat, 20 psi, F or C",
        "oven.most-heat, 240, F or C",
        "oven.lief, 8 years, oven.life"
    })
    void a_value_that_is_not_allowed_is_refused_with_its_place(String id, String value, String says) {
        LimitLayer layer = layer("company", id, value);
        assertThatThrownBy(() -> LimitLayer.over(TABLE, List.of(layer)))
                .isInstanceOf(Mistakes.class)
                .hasMessageContaining("shop.yaml:4:")
                .hasMessageContaining(says);
    }

    @Test
    void layers_are_laid_lowest_first_whatever_their_order() {
        List<LimitLayer> layers =
                List.of(layer("company", "oven.most-heat", "230 F"), layer("jurisdiction", "oven.most-heat", "240 F"));
        assertThat(LimitLayer.over(TABLE, layers).get("oven.most-heat").written())
                .isEqualTo("230 F");
    }

    @Test
    void a_company_cannot_loosen_what_its_jurisdiction_tightened() {
        List<LimitLayer> layers =
                List.of(layer("company", "oven.most-heat", "245 F"), layer("jurisdiction", "oven.most-heat", "240 F"));
        assertThatThrownBy(() -> LimitLayer.over(TABLE, layers)).hasMessageContaining("less cautious than 240 F");
    }

    @Test
    void two_layers_of_one_level_hold_both_where_they_set_different_limits() {
        Map<String, Limit> laid = LimitLayer.over(
                TABLE,
                List.of(layer("company", "oven.most-heat", "245 F"), layer("company", "oven.least-gap", "2 ft")));
        assertThat(laid.get("oven.most-heat").written()).isEqualTo("245 F");
        assertThat(laid.get("oven.least-gap").written()).isEqualTo("2 ft");
    }

    @ParameterizedTest
    @CsvSource({"company, 8 years, 9 years", "company, 9 years, 8 years", "visit, 8 years, 9 years"})
    void two_layers_of_one_level_that_set_one_limit_otherwise_are_refused_and_both_are_named(
            String level, String one, String other) {
        List<LimitLayer> layers =
                List.of(layer("the shop", level, "oven.life", one), layer("the owner", level, "oven.life", other));
        assertThatThrownBy(() -> LimitLayer.over(TABLE, layers))
                .hasMessageContaining("the owner sets " + other + ", and the shop sets " + one);
    }

    @Test
    void two_layers_of_one_level_that_agree_in_other_words_are_taken() {
        List<LimitLayer> layers = List.of(
                layer("the shop", "company", "oven.life", "8 years"),
                layer("the owner", "company", "oven.life", "96 months"));
        assertThat(LimitLayer.over(TABLE, layers).get("oven.life").written()).isEqualTo("96 months");
    }

    @Test
    void of_two_laws_the_later_may_be_stricter_and_a_milder_one_is_refused_by_the_name_of_the_other() {
        LimitLayer state = layer("the state", "jurisdiction", "oven.life", "9 years");
        LimitLayer county = layer("the county", "jurisdiction", "oven.life", "8 years");
        assertThat(LimitLayer.over(TABLE, List.of(state, county)).get("oven.life"))
                .extracting(Limit::written, Limit::layer)
                .containsExactly("8 years", "the county");
        assertThatThrownBy(() -> LimitLayer.over(TABLE, List.of(county, state)))
                .hasMessageContaining("9 years is less cautious than 8 years, which the county sets");
    }

    @Test
    void what_either_of_two_laws_sets_binds_the_company_above_them() {
        List<LimitLayer> layers = List.of(
                layer("the state", "jurisdiction", "oven.life", "9 years"),
                layer("the county", "jurisdiction", "oven.least-gap", "2 ft"),
                layer("the shop", "company", "oven.life", "10 years"));
        assertThatThrownBy(() -> LimitLayer.over(TABLE, layers))
                .hasMessageContaining("10 years is less cautious than 9 years, which the state sets");
    }

    @Test
    void every_mistake_of_a_layer_is_named_at_once() {
        LimitLayer layer = LimitLayer.read(
                "shop.yaml", "layer: shop\nlevel: visit\nlimits: {oven.most-heat: 300 F, oven.life: 40 years}\n");
        assertThatThrownBy(() -> LimitLayer.over(TABLE, List.of(layer)))
                .hasMessageContaining("oven.most-heat")
                .hasMessageContaining("oven.life");
    }
}
