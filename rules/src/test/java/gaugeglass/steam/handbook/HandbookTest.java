package gaugeglass.steam.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.steam.reckon.Worked;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every reckoning that has a name. */
class HandbookTest {

    static Stream<Entry> entries() {
        return Handbook.all().stream();
    }

    @Test
    void names_are_unlike_and_written_alike() {
        List<String> names = entries().map(Entry::name).toList();
        assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z0-9]+(-[a-z0-9]+)*"));
        assertThat(Handbook.nearest("co-airfree")).contains("co-air-free");
        assertThat(Handbook.find("nothing")).isEmpty();
    }

    /** Worked by hand from the line as shown, by a reader that shares nothing with the one in the program. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void the_numbers_shown_give_the_answer_shown(Entry entry) {
        Worked worked = entry.work("test", entry.example());
        int reckoned = 0;
        for (Worked.Line line : worked.lines()) {
            if (!line.numbers().isEmpty()) {
                double answer = number(line.answer());
                double byHand = new ByHand(line.numbers()).value();
                assertThat(byHand)
                        .as("%s: %s", line.what(), line.numbers())
                        .isCloseTo(answer, within(allowed(line.numbers(), answer)));
                reckoned++;
            }
        }
        assertThat(reckoned > 0
                        || Set.of("saturation", "steam-pressure", "equalizer", "drain")
                                .contains(entry.name()))
                .isTrue();
        assertThat(worked.sources()).isNotEmpty();
        assertThat(entry.range()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void each_thing_that_is_wanted_is_missed_by_name(Entry entry) {
        for (Input input : entry.inputs()) {
            List<String> without = entry.example().stream()
                    .filter(pair -> !pair.startsWith(input.name() + "="))
                    .toList();
            if (input.need() == Input.Need.REQUIRED) {
                assertThatExceptionOfType(Mistakes.class)
                        .isThrownBy(() -> entry.work("place", without))
                        .withMessageStartingWith("place: " + input.name() + ": not told: " + input.what());
            }
            if (input.need() == Input.Need.DEFAULTED) {
                assertThat(entry.work("place", without).lines()).isNotEmpty();
            }
        }
    }

    /** Every input, given something of another dimension or a word that is none of its own. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void another_dimension_is_refused_with_the_one_expected(Entry entry) {
        for (Input input : entry.inputs()) {
            for (String wrong : List.of("5 bananas", "5 kg", "", "nonsense", "1,5")) {
                List<String> pairs = new ArrayList<>(entry.example().stream()
                        .filter(pair -> !pair.startsWith(input.name() + "="))
                        .toList());
                pairs.add(input.name() + "=" + wrong);
                if (input.kind() instanceof Input.Money && wrong.indexOf(' ') > 0) {
                    continue;
                }
                assertThatExceptionOfType(Mistakes.class)
                        .as("%s=%s", input.name(), wrong)
                        .isThrownBy(() -> entry.work("place", pairs))
                        .withMessageStartingWith("place: " + input.name() + ": ");
            }
        }
    }

    /** No number that a person may type ends in anything but an answer or a refusal. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void extreme_numbers_are_answered_or_refused(Entry entry) {
        for (Input input : entry.inputs()) {
            if (!(input.kind() instanceof Input.Measure || input.kind() instanceof Input.Number)) {
                continue;
            }
            String unit = unit(entry, input);
            for (String number : List.of("0", "-1", "0.000001", "1", "999999999999")) {
                List<String> pairs = new ArrayList<>(entry.example().stream()
                        .filter(pair -> !pair.startsWith(input.name() + "="))
                        .toList());
                pairs.add(input.name() + "=" + number + unit);
                try {
                    Worked worked = entry.work("place", pairs);
                    assertThat(worked.answer().shown()).isNotEmpty();
                } catch (Mistakes refusal) {
                    assertThat(refusal.getMessage()).startsWith("place: ");
                }
            }
        }
    }

    /** The ends that the descriptions promise: answered on the end, refused just past it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "saturation      | barometer | 8 psia, 16 psia | 7.99 psia, 16.01 psia",
                "steam-pressure  | temperature | 33 F, 400 F | 32.9 F, 400.1 F",
                "radiation       | edr | 0.01 ft2, 100000 ft2 | 0 ft2, 100000.1 ft2",
                "radiation       | output | 1 Btu/h, 100000000 Btu/h | 0 Btu/h, 100000001 Btu/h",
                "gas-input       | dial | 0.01 ft3, 1000 ft3 | 0.009 ft3, 1001 ft3",
                "gas-input       | time | 5 s, 1 h | 4.9 s, 3601 s",
                "gas-input       | heat | 400 Btu/ft3, 3500 Btu/ft3 | 399 Btu/ft3, 3501 Btu/ft3",
                "gas-input       | turns | 1, 1000 | 0, 1001",
                "oil-input       | nozzle | 0.2 gph, 50 gph | 0.19 gph, 50.1 gph",
                "oil-input       | pressure | 60 psi, 300 psi | 59 psi, 301 psi",
                "oil-input       | within | 0 psi, 20 psi | -1 psi, 21 psi",
                "oil-input       | heat | 100000 Btu/gal, 180000 Btu/gal | 99999 Btu/gal, 180001 Btu/gal",
                "output          | efficiency | 40 %, 100 % | 39.9 %, 100.1 %",
                "co-air-free     | co | 0 ppm, 50000 ppm | -1 ppm, 50001 ppm",
                "co-air-free     | o2 | 0 %, 20.89 % | -0.1 %, 20.9 %",
                "excess-air      | o2 | 0 %, 20.89 % | -0.1 %, 20.9 %",
                "expected-co2    | co2 | 0 %, 20 % | -0.1 %, 20.1 %",
                "stack-loss      | flue | 20 C, 1500 F | 19 C, 1501 F",
                "gross-efficiency | o2 | 2 %, 10 % | 1.9 %, 10.1 %",
                "gross-efficiency | rise | 200 F, 600 F | 199 F, 601 F",
                "fuel-saved      | after | 40 %, 100 % | 39 %, 101 %",
                "water-used      | digits | 4 | 1, 10",
                "make-up         | time | 0.001 s, 3660 d | 0 s, 3661 d",
                "make-up         | burner-hours | 1 s, 3660 d | 0 s, 3661 d",
                "scale           | hardness | 0 gr/gal, 100 gr/gal | 101 gr/gal, 2000 mg/L",
                "oxygen          | temperature | 0 C, 30 C | -0.1 C, 30.1 C",
                "concentration   | feed | 0.1 mg/L, 50000 mg/L | 0 mg/L, 50001 mg/L",
                "low-water-time  | volume | 0.1 gal, 10000 gal | 0 gal, 10001 gal",
                "static-head     | pressure | 0 psi, 5 psi | -0.1 psi, 5.1 psi",
                "static-head     | water | 40 F, 275 F | 39 F, 276 F",
                "equalizer       | steam | 0.1 lb/h, 100000 lb/h | 0 lb/h, 100001 lb/h",
                "safety-valve    | output | 1 Btu/h, 100000000 Btu/h | 0 Btu/h, 100000001 Btu/h",
                "combustion-air  | free | 0.1 %, 100 % | 0 %, 101 %",
                "steam-speed     | size | 1/2 in, 12 in | 3/8 in, 14 in",
                "pipe-capacity   | length | 1 ft, 400 ft | 0 ft, 401 ft",
                "trap-loss       | orifice | 1/64 in, 1 in | 0 in, 1.01 in",
                "trap-loss       | pressure | 0 psi, 150 psi | -0.1 psi, 151 psi",
                "season-hours    | rise | 20 F, 150 F | 19 F, 151 F",
                "pipe-loss       | length | 1 ft, 10000 ft | 0 ft, 10001 ft",
                "pipe-loss       | room | -40 F, 140 F | -41 F, 141 F"
            })
    void range_ends_are_answered_and_what_lies_past_them_refused(
            String name, String input, String answered, String refused) {
        Entry entry = Handbook.find(name).orElseThrow();
        for (String value : answered.split(", ")) {
            assertThat(entry.work("place", with(entry, input, value)).lines())
                    .as("%s=%s", input, value)
                    .isNotEmpty();
        }
        for (String value : refused.split(", ")) {
            assertThatExceptionOfType(Mistakes.class)
                    .as("%s=%s", input, value)
                    .isThrownBy(() -> entry.work("place", with(entry, input, value)));
        }
    }

    @Test
    void everything_wrong_is_told_at_once() {
        Entry entry = Handbook.find("stack-loss").orElseThrow();
        assertThatExceptionOfType(Mistakes.class)
                .isThrownBy(() -> entry.work("place", List.of("fuel=natural-gs", "fleu=180 C", "o2=5")))
                .satisfies(mistakes -> assertThat(mistakes.all()).hasSize(5))
                .withMessageContaining("did you mean \"natural-gas\"?")
                .withMessageContaining("did you mean \"flue\"?");
    }

    @Test
    void nothing_ever_says_that_a_boiler_is_safe_or_to_let_water_in() {
        Set<String> texts = new LinkedHashSet<>();
        entries().forEach(entry -> {
            texts.add(entry.title());
            Worked worked = entry.work("test", entry.example());
            texts.addAll(worked.warnings());
            worked.lines().forEach(line -> texts.add(line.what()));
        });
        assertThat(texts)
                .allMatch(text -> !text.toLowerCase(Locale.ROOT).matches("(?s).*\\bsafe\\b.*"))
                .noneMatch(text -> text.toLowerCase(Locale.ROOT).contains("add water"));
        assertThat(texts).anyMatch(text -> text.contains("no water in"));
    }

    private static List<String> with(Entry entry, String input, String value) {
        // Compared with a nameplate, an input has an end of its own.
        List<String> pairs = new ArrayList<>(entry.example().stream()
                .filter(pair -> !pair.startsWith(input + "=") && !pair.startsWith("nameplate="))
                .toList());
        pairs.add(input + "=" + value);
        return pairs;
    }

    private static String unit(Entry entry, Input input) {
        String value = Stream.concat(
                        entry.example().stream()
                                .filter(pair -> pair.startsWith(input.name() + "="))
                                .map(pair -> pair.substring(input.name().length() + 1)),
                        input.standIn().stream())
                .findFirst()
                .orElse("1 gal");
        return value.replaceFirst("^[-0-9./ ]+", " ").stripTrailing();
    }

    /** Figures are shown to six digits; a difference of two has fewer. */
    private static double allowed(String numbers, double answer) {
        boolean isDifference = numbers.matches("[0-9.]+ - [0-9.]+");
        double size = isDifference ? new ByHand(numbers.replace('-', '+')).value() : Math.abs(answer) * 10;
        return 1e-9 + size * 1e-5;
    }

    private static double number(Worked.Answer answer) {
        Rational number =
                answer instanceof Worked.Amount amount ? amount.quantity().value() : ((Worked.Count) answer).number();
        return number.toBigDecimal(MathContext.DECIMAL64).doubleValue();
    }

    /** Reads a shown line in doubles, from left to right. */
    private static final class ByHand {
        private final List<String> words;
        private int at;

        ByHand(String text) {
            words = List.of(text.replaceAll("([()/^+])", " $1 ")
                    .replace(" (-", " ( -")
                    .strip()
                    .split("\\s+"));
        }

        double value() {
            double value = product();
            while (at < words.size() && Set.of("+", "-").contains(words.get(at))) {
                value += words.get(at++).equals("+") ? product() : -product();
            }
            return value;
        }

        private double product() {
            double value = power();
            while (at < words.size() && Set.of("x", "/").contains(words.get(at))) {
                boolean isTimes = words.get(at++).equals("x");
                double next = power();
                value = isTimes ? value * next : value / next;
            }
            return value;
        }

        private double power() {
            double base = single();
            if (at < words.size() && words.get(at).equals("^")) {
                at++;
                return Math.pow(base, single());
            }
            return base;
        }

        private double single() {
            String word = words.get(at++);
            if (word.equals("sqrt")) {
                return Math.sqrt(single());
            }
            if (!word.equals("(")) {
                return Double.parseDouble(word);
            }
            double value = value();
            assertThat(words.get(at++)).isEqualTo(")");
            return value;
        }
    }
}
