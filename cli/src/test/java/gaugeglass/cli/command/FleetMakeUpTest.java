package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Make-up of many boilers beside one another. All sites are invented. At 400,000 Btu/h and 300 h a share of 0.405 % is 60 gal
 * (steam table IAPWS-IF97, 970.1 Btu/lb, and 8.345 lb/gal), so the shares stand to one another as the gallons do.
 */
class FleetMakeUpTest {
    private static String visit(String site, String boiler, int year, String gallons, String hours) {
        return "{\"format\":1,\"site\":{\"id\":\"" + site + "\"},\"visit\":{\"date\":\"" + year
                + "-09-14\"},\"boilers\":[{\"id\":\"" + boiler + "\",\"plate\":{\"output-mark\":\"marked\",\"output\":"
                + "\"400000 Btu/h\"},\"water-use\":{\"meter\":\"fitted\"},\"meter-readings\":{\"fitted\":2,\"each\":["
                + "{\"tag\":\"a\",\"row\":{\"on\":\"" + (year - 1)
                + "-09-14\",\"dial\":\"0 gal\",\"since\":\"fired\"}},{\"tag\":\"b\",\"row\":{\"on\":\"" + year
                + "-09-14\",\"dial\":\"" + gallons + " gal\",\"since\":\"fired\"}" + hours + "}]}}]}\n";
    }

    private static String visit(String site, int year, int gallons) {
        return visit(site, "B1", year, String.valueOf(gallons), ",\"burner-hours\":\"300 h\"");
    }

    private static String sites(int... gallons) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < gallons.length; i++) {
            all.append(visit("site-" + (char) ('a' + i), 2026, gallons[i]));
        }
        return all.toString();
    }

    private static NamedCsvRecord row(String input, String site) {
        String csv = Ran.withInput(input, "fleet", "-", "--lines", "--as", "csv", "--table", "make-up")
                .out();
        return CsvReader.builder().ofNamedCsvRecord(csv).stream()
                .filter(row -> row.getField(0).equals(site))
                .findFirst()
                .orElseThrow(() -> new AssertionError(csv));
    }

    private static String text(String input) {
        return Ran.withInput(input, "fleet", "-", "--lines").out().replaceAll("\\s+", " ");
    }

    /**
     * By hand, in gallons: of 30 45 60 60 75 90 90 105 120 and two more the quarters are 60 and 112.5 and the middle 90, so the
     * fence is 112.5 + 1.5 x 52.5 = 191.25 (quartiles as in OpenFormula, fence as J. W. Tukey drew it in 1977; from memory).
     */
    @ParameterizedTest
    @CsvSource({"190, nothing", "192, others"})
    void beyond_the_fence_a_boiler_stands_out_against_the_others(int gallons, String against) {
        String input = sites(30, 45, 60, 60, 75, 90, 90, 105, 120, gallons, 600);

        assertThat(row(input, "site-j").getField("stands out against")).isEqualTo(against);
        NamedCsvRecord much = row(input, "site-k");
        assertThat(much.getField("stands out against")).isEqualTo("others");
        // 600 x 8.345 lb of 400,000 / 970.1 x 300 lb are 4.048 %, and 600/90 times the middle.
        assertThat(much.getField("percent of steam")).isEqualTo("4.048");
        assertThat(much.getField("times the sites")).isEqualTo("6.67");
        assertThat(much.getField("sites")).isEqualTo("11");
        assertThat(text(input))
                .contains("At 11 sites a share of the steam made is known")
                // 60, 112.5, 90 and 191.25 of 148.1 gal to the percent.
                .contains("from 0.40 % to 0.76 %, the middle one at 0.61 %")
                .contains("above 1.29 %")
                .contains("4.05 6.7 1.64 - - B1, site-k, against the others");
    }

    @Test
    void nine_sites_are_too_few_to_tell_what_is_usual_and_ten_are_not() {
        assertThat(row(sites(30, 45, 60, 60, 75, 90, 90, 105, 600), "site-i").getField("stands out against"))
                .isEqualTo("nothing");
        assertThat(text(sites(30, 45, 60, 60, 75, 90, 90, 105, 600)))
                .contains("known at 9 sites, and fewer than 10 tell nothing of what is usual");
        assertThat(row(sites(30, 45, 60, 60, 75, 90, 90, 105, 120, 600), "site-j")
                        .getField("stands out against"))
                .isEqualTo("others");
    }

    @Test
    void a_site_counts_once_however_many_boilers_it_has() {
        StringBuilder input = new StringBuilder(sites(30, 45, 60, 60, 75, 90, 90, 105, 600));
        for (int i = 2; i < 9; i++) {
            input.append(visit("site-a", "B" + i, 2026, "40", ",\"burner-hours\":\"300 h\""));
        }

        assertThat(text(input.toString())).contains("known at 9 sites, and fewer than 10");
    }

    /** By hand: the middle of 58, 60 and 64 gal is 60, and more than 1.5 times that, the rulebook's limit, is more than 90. */
    @ParameterizedTest
    @CsvSource({"89, nothing, 1.48", "91, itself, 1.52"})
    void a_boiler_stands_out_against_the_middle_of_its_own_earlier_years(int gallons, String against, String times) {
        List<String> visits = new ArrayList<>(List.of(
                visit("elm", 2023, 58), visit("elm", 2024, 64), visit("elm", 2025, 60), visit("elm", 2026, gallons)));
        String first = String.join("", visits);
        Collections.shuffle(visits, new Random(1));

        NamedCsvRecord elm = row(first, "elm");

        assertThat(elm.getField("stands out against")).isEqualTo(against);
        assertThat(elm.getField("times their middle")).isEqualTo(times);
        assertThat(elm.getField("earlier years")).isEqualTo("3");
        assertThat(elm.getField("compared by")).isEqualTo("share");
        assertThat(row(String.join("", visits), "elm").getFields()).isEqualTo(elm.getFields());
    }

    @Test
    void two_earlier_years_are_too_few() {
        assertThat(row(visit("elm", 2024, 58) + visit("elm", 2025, 60) + visit("elm", 2026, 900), "elm")
                        .getField("stands out against"))
                .isEqualTo("nothing");
    }

    @Test
    void without_burner_hours_a_boiler_is_held_against_itself_by_gallons_a_day_and_not_against_others() {
        String unknown = "";
        String input = sites(30, 45, 60, 60, 75, 90, 90, 105, 120, 130)
                + visit("elm", "B1", 2023, "365", unknown)
                + visit("elm", "B1", 2024, "366", unknown)
                + visit("elm", "B1", 2025, "365", unknown)
                + visit("elm", "B1", 2026, "730", unknown);

        NamedCsvRecord elm = row(input, "elm");

        // By hand: a gallon a day in each of three years, one of them of 366 days, and then two.
        assertThat(elm.getField("gallons a day")).isEqualTo("2.000");
        assertThat(elm.getField("compared by")).isEqualTo("gallons a day");
        assertThat(elm.getField("times their middle")).isEqualTo("2.00");
        assertThat(elm.getField("stands out against")).isEqualTo("itself");
        assertThat(elm.getField("times the sites")).isEmpty();
    }

    /** Common practice: a few gallons a year tell of filling and trying out, however many times the year before's they are. */
    @Test
    void what_is_too_little_in_a_year_does_not_stand_out() {
        String input = visit("elm", 2023, 1) + visit("elm", 2024, 2) + visit("elm", 2025, 1);

        assertThat(row(input + visit("elm", 2026, 9), "elm").getField("stands out against"))
                .isEqualTo("nothing");
        assertThat(row(input + visit("elm", 2026, 11), "elm").getField("stands out against"))
                .isEqualTo("itself");
    }

    @Test
    void a_corrected_visit_takes_the_place_of_the_one_of_the_same_day_and_a_later_one_without_a_log_tells_nothing() {
        String input = visit("elm", 2026, 600) + visit("elm", 2026, 60);
        String bare = "{\"format\":1,\"site\":{\"id\":\"elm\"},\"visit\":{\"date\":\"2027-09-14\"},\"boilers\":["
                + "{\"id\":\"B1\"}]}\n";

        assertThat(row(input, "elm").getField("percent of steam")).isEqualTo("0.405");
        assertThat(text(input + bare)).contains("Of 1 boiler, the latest visit to 0 tells the year's make-up");
    }
}
