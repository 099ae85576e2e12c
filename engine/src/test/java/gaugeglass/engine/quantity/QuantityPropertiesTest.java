package gaugeglass.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** What must hold for every quantity and not only for the ones somebody thought of. */
class QuantityPropertiesTest {

    @Property
    void a_quantity_equals_itself_in_every_unit_and_hashes_alike(@ForAll("quantities") Quantity quantity) {
        for (Unit unit : Unit.of(quantity.dimension())) {
            Quantity converted = quantity.inUnit(unit);
            assertThat(converted)
                    .isEqualTo(quantity)
                    .hasSameHashCodeAs(quantity)
                    .isEqualByComparingTo(quantity);
            assertThat(converted.inUnit(quantity.unit()).value()).isEqualTo(quantity.value());
        }
    }

    @Property
    void order_is_total_and_agrees_with_equality(
            @ForAll("threeOfOneDimension") Tuple.Tuple3<Quantity, Quantity, Quantity> of) {
        Quantity a = of.get1();
        Quantity b = of.get2();
        Quantity c = of.get3();
        assertThat(Integer.signum(a.compareTo(b))).isEqualTo(-Integer.signum(b.compareTo(a)));
        assertThat(a.compareTo(b) == 0).isEqualTo(a.equals(b));
        assertThat(a.isAbove(b)).isEqualTo(!a.isAtMost(b));
        assertThat(a.isBelow(b)).isEqualTo(!a.isAtLeast(b));
        if (a.compareTo(b) <= 0 && b.compareTo(c) <= 0) {
            assertThat(a.compareTo(c)).isLessThanOrEqualTo(0);
        }
    }

    @Property
    void order_does_not_depend_on_the_units(
            @ForAll("threeOfOneDimension") Tuple.Tuple3<Quantity, Quantity, Quantity> of) {
        Quantity a = of.get1();
        Quantity b = of.get2();
        Unit unit = of.get3().unit();
        assertThat(a.inUnit(unit).compareTo(b.inUnit(unit))).isEqualTo(a.compareTo(b));
    }

    @Property
    void what_is_added_can_be_taken_away_again(
            @ForAll("threeOfOneDimension") Tuple.Tuple3<Quantity, Quantity, Quantity> of) {
        Quantity distance = of.get2().minus(of.get3());
        assertThat(of.get1().plus(distance).minus(distance)).isEqualTo(of.get1());
        assertThat(of.get1().plus(distance).minus(of.get1())).isEqualTo(distance);
        assertThat(of.get3().plus(distance)).isEqualTo(of.get2());
    }

    @Property
    void a_printed_quantity_reads_back_as_the_same(@ForAll("writable") Quantity quantity) {
        Quantity read = Quantity.parse(quantity.toString(), quantity.dimension());
        assertThat(read).isEqualTo(quantity);
        assertThat(read.unit()).isEqualTo(quantity.unit());
        assertThat(read).hasToString(quantity.toString());
    }

    @Property
    void a_mixed_number_is_its_whole_and_its_fraction(
            @ForAll("wholes") int whole, @ForAll("sixteenths") int sixteenths) {
        for (String joint : new String[] {" ", "-", "\u2013", "\u00a0"}) {
            Quantity read = Quantity.parse(whole + joint + sixteenths + "/16 in", Dimension.LENGTH);
            assertThat(read.value()).isEqualTo(Rational.of(whole * 16L + sixteenths, 16));
        }
    }

    @Property
    void whatever_is_typed_is_read_or_refused_in_words_without_control_characters(@ForAll("typedAnyhow") String text) {
        for (Dimension dimension : Dimension.values()) {
            try {
                Quantity read = Quantity.parse(text, dimension);
                assertThat(Quantity.parse(read.toString(), dimension)).isEqualTo(read);
            } catch (QuantityFormatException refusal) {
                assertThat(refusal.getMessage().chars()).allMatch(c -> c >= ' ' && (c < 0x7f || c > 0x9f));
                assertThat(refusal.problem()).isNotEmpty();
                assertThat(refusal.expected()).isNotEmpty();
            }
        }
    }

    @Property
    void a_fraction_agrees_with_big_decimals(@ForAll("decimals") BigDecimal a, @ForAll("decimals") BigDecimal b) {
        Rational first = Rational.of(a);
        Rational second = Rational.of(b);
        assertThat(first.compareTo(second)).isEqualTo(a.compareTo(b));
        assertThat(first.plus(second)).isEqualTo(Rational.of(a.add(b)));
        assertThat(first.minus(second)).isEqualTo(Rational.of(a.subtract(b)));
        assertThat(first.times(second)).isEqualTo(Rational.of(a.multiply(b)));
        assertThat(first.numerator().gcd(first.denominator())).isEqualTo(BigInteger.ONE);
        if (b.signum() != 0) {
            assertThat(first.dividedBy(second).times(second)).isEqualTo(first);
        }
    }

    @Provide
    Arbitrary<Integer> wholes() {
        return Arbitraries.integers().between(0, 999);
    }

    @Provide
    Arbitrary<Integer> sixteenths() {
        return Arbitraries.integers().between(0, 15);
    }

    @Provide
    Arbitrary<BigDecimal> decimals() {
        return Arbitraries.oneOf(
                Arbitraries.bigDecimals()
                        .between(new BigDecimal("-1000"), new BigDecimal("1000"))
                        .ofScale(3),
                Arbitraries.bigDecimals()
                        .between(new BigDecimal("-1e18"), new BigDecimal("1e18"))
                        .ofScale(9));
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        return Arbitraries.of(Unit.values()).flatMap(QuantityPropertiesTest::of);
    }

    @Provide
    Arbitrary<Tuple.Tuple3<Quantity, Quantity, Quantity>> threeOfOneDimension() {
        return Arbitraries.of(Dimension.values()).flatMap(dimension -> {
            Arbitrary<Quantity> one = Arbitraries.of(Unit.of(dimension)).flatMap(QuantityPropertiesTest::of);
            return Combinators.combine(one, one, one).as(Tuple::of);
        });
    }

    /** Nine significant digits at most, and nothing that the parser refuses for its sign. */
    @Provide
    Arbitrary<Quantity> writable() {
        return Combinators.combine(
                        Arbitraries.of(Unit.values()),
                        Arbitraries.integers().between(-999_999_999, 999_999_999),
                        Arbitraries.integers().between(0, 5))
                .as((unit, digits, scale) -> {
                    boolean refused = digits < 0
                            && (!unit.dimension().canBeNegative() || unit.dimension() == Dimension.TEMPERATURE);
                    return Quantity.of(Rational.of(BigDecimal.valueOf(refused ? -(long) digits : digits, scale)), unit);
                });
    }

    @Provide
    Arbitrary<String> typedAnyhow() {
        Arbitrary<String> pieces = Arbitraries.of(
                "1", "5", "30", "1/2", "-", " ", ".", ",", "/", "\"", "'", "\u00bd", "in", "psi", "H2O", "Hg", "oz",
                "deg", "F", "vac", "wc", "%", "h", "min", "\u00b2", "\u2212", "\u0000", "\u001b", "\u200b", "\ud83d",
                "e3", "per ");
        return Arbitraries.oneOf(
                pieces.list().ofMaxSize(7).map(list -> String.join("", list)),
                Arbitraries.strings().ofMaxLength(12));
    }

    private static Arbitrary<Quantity> of(Unit unit) {
        return Combinators.combine(
                        Arbitraries.integers().between(-100_000, 100_000),
                        Arbitraries.integers().between(1, 1000))
                .as((upper, lower) -> Quantity.of(Rational.of(upper, lower), unit));
    }
}
