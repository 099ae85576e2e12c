package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures of the U.S. Standard Atmosphere 1976, table of pressure by height, from memory with high certainty. */
class StandardAtmosphereTest {
    @ParameterizedTest(name = "{0} ft: {1} psia")
    @CsvSource({"0, 14.696", "1000, 14.173", "2000, 13.664", "5000, 12.228", "10000, 10.106"})
    void the_table_of_the_standard_atmosphere_comes_out(int feet, String psia) {
        Quantity at = StandardAtmosphere.at(Quantity.of(feet, Unit.FOOT));
        assertThat(at.in(Unit.PSI_ABSOLUTE).doubleValue())
                .isCloseTo(Double.parseDouble(psia), org.assertj.core.data.Offset.offset(0.002));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1001, 12001})
    void heights_where_no_boiler_stands_are_refused(int feet) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.at(Quantity.of(feet, Unit.FOOT)))
                .withMessageContaining("elevation");
    }
}
