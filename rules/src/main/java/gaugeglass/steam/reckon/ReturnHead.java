package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.KELVIN;
import static gaugeglass.engine.quantity.Unit.PASCAL;
import static gaugeglass.engine.quantity.Unit.PSI;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How high water must stand in a return to weigh as much as a pressure presses.
 *
 * <p>Formula: height = pressure / (density x standard gravity). Hot water is lighter and must stand higher: 27.71 in per
 * psi at 60 F, 28.88 in at 212 F. What friction and a margin need comes on top and is not in here.
 *
 * <p>Density: that of water about to boil, IAPWS-IF97; air pressure makes it denser by less than one part in ten thousand.
 */
public final class ReturnHead {
    private static final Quantity NO_PRESSURE = Quantity.of(0, PSI);
    private static final Quantity HIGHEST_PRESSURE = Quantity.of(30, PSI);
    private static final Quantity NO_HEIGHT = Quantity.of(0, INCH);
    private static final Quantity HIGHEST_HEIGHT = Quantity.of(900, INCH);
    private static final Quantity COLDEST = Quantity.of(40, FAHRENHEIT);
    private static final Quantity HOTTEST = Quantity.of(275, FAHRENHEIT);

    private static final double GRAVITY = 9.80665;
    private static final double METRES_PER_INCH = 0.0254;
    private static final int PLACES = 2;

    private ReturnHead() {}

    /**
     * The height of water that balances one psi, in inches, rounded to 0.01 in.
     *
     * @param water temperature of the water, 40 to 275 F, ends included
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Quantity perPsi(Quantity water) {
        Ranges.within("water temperature", water, COLDEST, HOTTEST);
        double density = SteamTable.waterDensity(water.in(KELVIN).doubleValue());
        double pascalsPerPsi = Quantity.of(1, PSI).in(PASCAL).doubleValue();
        BigDecimal inches = BigDecimal.valueOf(pascalsPerPsi / (density * GRAVITY) / METRES_PER_INCH)
                .setScale(PLACES, RoundingMode.HALF_UP);
        return Quantity.of(Rational.of(inches), INCH);
    }

    /**
     * The height of water that balances a pressure: psi x {@link #perPsi}, in inches, exact but for that factor.
     *
     * @param pressure gauge pressure or difference of pressures, 0 to 30 psi, ends included
     * @param water temperature of the water, 40 to 275 F, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity forPressure(Quantity pressure, Quantity water) {
        Ranges.within("pressure", pressure, NO_PRESSURE, HIGHEST_PRESSURE);
        return perPsi(water).times(pressure.valueIn(PSI));
    }

    /**
     * The pressure that a height of water balances: height / {@link #perPsi}, in psi, exact but for that factor.
     *
     * @param height height of the water, 0 to 900 in, ends included
     * @param water temperature of the water, 40 to 275 F, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity pressureOf(Quantity height, Quantity water) {
        Ranges.within("height", height, NO_HEIGHT, HIGHEST_HEIGHT);
        return Quantity.of(height.ratioTo(perPsi(water)), PSI);
    }
}
