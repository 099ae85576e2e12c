package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.LimitUsed;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Said;
import gaugeglass.engine.Assessment.Standing;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster.Presence;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.toy.BrakeKind;
import gaugeglass.engine.toy.BrakeSort;
import gaugeglass.engine.toy.ChainSize;
import gaugeglass.engine.toy.ChainSpares;
import gaugeglass.engine.toy.ChainWear;
import gaugeglass.engine.toy.Crack;
import gaugeglass.engine.toy.Floor;
import gaugeglass.engine.toy.FrameCrack;
import gaugeglass.engine.toy.FrameMade;
import gaugeglass.engine.toy.FrameMaterial;
import gaugeglass.engine.toy.FrameNumber;
import gaugeglass.engine.toy.Grip;
import gaugeglass.engine.toy.Material;
import gaugeglass.engine.toy.Noise;
import gaugeglass.engine.toy.PadThickness;
import gaugeglass.engine.toy.Place;
import gaugeglass.engine.toy.PullDistance;
import gaugeglass.engine.toy.PullGrip;
import gaugeglass.engine.toy.RideNoise;
import gaugeglass.engine.toy.SaddleRaised;
import gaugeglass.engine.toy.SpokesMissing;
import gaugeglass.engine.toy.TyreMarked;
import gaugeglass.engine.toy.TyrePressure;
import gaugeglass.engine.toy.Weather;
import gaugeglass.engine.toy.WheelPlace;
import gaugeglass.engine.toy.WheelTrued;
import gaugeglass.engine.toy.Workshop;
import gaugeglass.engine.toy.WorkshopFloor;
import gaugeglass.engine.toy.WorkshopTemperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an assessment says, on visits of the toy trade. */
class AssessmentTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private final Rulebook rulebook = Workshop.rulebook();

    private Observations.Builder visit() {
        return Observations.of(rulebook.vocabulary(), "R1");
    }

    /** A bicycle of which everything was seen and nothing is amiss. */
    private Observations.Builder sound() {
        return visit().fitted("wheel", State.AS_FOUND, 1)
                .tag("wheel", "rear")
                .fitted("brake", State.AS_FOUND, 1)
                .tag("brake", "B")
                .seen(new WorkshopFloor(Floor.LEVEL))
                .seen(new WorkshopTemperature(Quantity.of(68, Unit.FAHRENHEIT)))
                .seen(new FrameMaterial(Material.STEEL))
                .seen(new FrameNumber("123"))
                .seen(new FrameMade(DAY.minusYears(3)))
                .seen(new FrameCrack(Crack.NONE_SEEN))
                .seen(new ChainWear(percent("0.1")))
                .seen(new ChainSize(Quantity.of(56, Unit.INCH), 113))
                .seen(new ChainSpares(2))
                .seen(new SaddleRaised(Quantity.of(5, Unit.INCH), "the maker", DAY.minusYears(3)))
                .seen(new RideNoise(Noise.NONE_HEARD))
                .seen(new WheelPlace("rear", Place.REAR))
                .seen(new TyrePressure("rear", Quantity.of(60, Unit.PSI)))
                .seen(new TyreMarked("rear", Quantity.of(65, Unit.PSI)))
                .seen(new SpokesMissing("rear", 0))
                .seen(new WheelTrued("rear", DAY.minusMonths(2)))
                .seen(new BrakeKind("B", BrakeSort.RIM))
                .seen(new PadThickness("B", Quantity.of(5, Unit.MILLIMETRE)))
                .seen(new PullGrip("B", Weather.DRY, Grip.HELD))
                .seen(new PullGrip("B", Weather.WET, Grip.HELD))
                .seen(new PullDistance("B", Weather.DRY, Quantity.of(12, Unit.FOOT)))
                .seen(new PullDistance("B", Weather.WET, Quantity.of(18, Unit.FOOT)));
    }

    private Observations.Builder soundBut(Record... others) {
        Observations.Builder builder = sound();
        for (Record other : others) {
            replace(builder, other);
        }
        return builder;
    }

    private static void replace(Observations.Builder builder, Record other) {
        Observations sofar = builder.build();
        sofar.answers().stream()
                .filter(answer -> answer.item().type().equals(other.getClass())
                        && answer.keys().equals(answer.item().keysOf(other)))
                .forEach(builder::without);
        builder.seen(other);
    }

    private Assessment assess(Observations.Builder builder) {
        return rulebook.assess(builder.build(), DAY);
    }

    private static Quantity percent(String number) {
        return Quantity.of(number, Unit.PERCENT);
    }

    private static Outcome outcome(Assessment assessment, String rule, String subject) {
        return assessment.outcomes().stream()
                .filter(o -> o.rule().equals(rule) && o.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private static Word word(Assessment assessment, String rule, String subject) {
        return outcome(assessment, rule, subject).outcome();
    }

    private static Finding finding(Assessment assessment, String rule) {
        return assessment.findings().stream()
                .filter(f -> f.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_sound_visit_leaves_nothing_undetermined_and_nothing_against_either_gate() {
        Assessment assessment = assess(sound());

        assertThat(assessment.findings()).isEmpty();
        assertThat(assessment.count(Word.UNDETERMINED)).isZero();
        assertThat(assessment.count(Word.FOUND)).isZero();
        assertThat(assessment.count(Word.IN_ORDER) + assessment.count(Word.NOT_APPLICABLE))
                .isEqualTo(assessment.outcomes().size());
        assertThat(assessment.testFiring())
                .isEqualTo(new Assessment.Gate(Permit.NOTHING_FOUND_AGAINST, List.of(), List.of()));
        assertThat(assessment.release())
                .isEqualTo(new Assessment.Gate(Permit.NOTHING_FOUND_AGAINST, List.of(), List.of()));
        assertThat(assessment.wanting()).isEmpty();
        assertThat(assessment.unit()).isEqualTo("R1");
        assertThat(assessment.date()).isEqualTo(DAY);
    }

    @Test
    void outcomes_stand_in_the_order_of_cards_and_tags_and_leave_out_the_signs() {
        Assessment assessment =
                assess(sound().fitted("brake", State.AS_FOUND, 3).tag("brake", "A"));

        List<Ref> order = new ArrayList<>();
        rulebook.book().cards().values().forEach(card -> {
            if (card.about().equals("brake")) {
                List.of("B", "A", Subjects.NOT_LISTED).forEach(tag -> order.add(new Ref(card.id(), tag)));
            } else if (!card.sign()) {
                order.add(new Ref(card.id(), card.about().equals("wheel") ? "rear" : ""));
            }
        });
        assertThat(assessment.outcomes().stream().map(o -> new Ref(o.rule(), o.subject())))
                .containsExactlyElementsOf(order);
    }

    @Test
    void what_is_fitted_makes_a_practice_not_applicable_and_anything_else_in_order() {
        assertThat(word(assess(sound()), "frame.old", "")).isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(assess(soundBut(new FrameMaterial(Material.ALUMINIUM))), "frame.old", ""))
                .isEqualTo(Word.IN_ORDER);
        assertThat(word(assess(soundBut(new WheelPlace("rear", Place.FRONT))), "wheel.soft", "rear"))
                .isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(assess(sound()), "frame.cracked", "")).isEqualTo(Word.IN_ORDER);
        assertThat(word(assess(sound()), "brake.none", "")).isEqualTo(Word.NOT_APPLICABLE);
    }

    @Test
    void what_there_is_nothing_to_reckon_of_is_not_applicable_only_where_what_is_fitted_tells_so() {
        // No disc is fitted: a structural answer. No wheel is there: a count.
        assertThat(word(assess(sound()), "brake.disc", "")).isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(assess(soundBut(new BrakeKind("B", BrakeSort.DISC))), "brake.disc", ""))
                .isEqualTo(Word.IN_ORDER);
        assertThat(word(assess(visit().fitted("wheel", State.AS_FOUND, 0)), "spokes.all", ""))
                .isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(assess(sound()), "spokes.all", "")).isEqualTo(Word.IN_ORDER);
    }

    @Test
    void one_answer_is_enough_for_any_and_all_are_needed_for_none() {
        Observations.Builder two = sound().fitted("brake", State.AS_FOUND, 2).tag("brake", "C");
        replace(two, new RideNoise(Noise.CLICK));

        assertThat(word(assess(two), "brake.disc", "")).isEqualTo(Word.UNDETERMINED);
        assertThat(outcome(assess(two), "brake.disc", "").missing())
                .containsExactly(new Missing("brake.kind", "C", ""));
        replace(two, new BrakeKind("B", BrakeSort.DISC));
        assertThat(word(assess(two), "brake.disc", "")).isEqualTo(Word.FOUND);
        replace(two, new BrakeKind("B", BrakeSort.RIM));
        two.seen(new BrakeKind("C", BrakeSort.BACK_PEDAL));
        assertThat(word(assess(two), "brake.disc", "")).isEqualTo(Word.NOT_APPLICABLE);
    }

    @Test
    void equipment_is_judged_for_those_not_listed_until_all_are_described() {
        Observations.Builder open = sound().fitted("brake", State.AS_FOUND, 2);
        Outcome unlisted = outcome(assess(open), "brake.pad", Subjects.NOT_LISTED);

        assertThat(unlisted.outcome()).isEqualTo(Word.UNDETERMINED);
        assertThat(unlisted.missing())
                .containsExactly(new Missing("brake", Subjects.NOT_LISTED, "1 of 2 not described"));
        assertThat(assess(open).testFiring().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(assess(open).testFiring().open()).contains(new Ref("brake.pad", Subjects.NOT_LISTED));

        Assessment uncounted = assess(visit().tag("brake", "B").uncounted("brake", "wrapped up"));
        assertThat(outcome(uncounted, "brake.pad", Subjects.NOT_LISTED).missing())
                .containsExactly(new Missing("brake.fitted", "", "wrapped up"));
        assertThat(word(uncounted, "brake.none", "")).isEqualTo(Word.NOT_APPLICABLE);

        Assessment none = assess(visit().fitted("brake", State.AS_FOUND, 0));
        assertThat(word(none, "brake.pad", "")).isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(none, "brake.none", "")).isEqualTo(Word.FOUND);
    }

    @Test
    void a_missing_answer_is_named_with_its_subject_and_reason() {
        Observations.Builder builder = sound();
        builder.build().answers().stream()
                .filter(a ->
                        a.item().id().equals("wheel.marked") || a.item().id().equals("chain.wear"))
                .forEach(builder::without);
        builder.unread("wheel.marked", List.of("rear"), State.AS_FOUND, "worn away");
        Assessment assessment = assess(builder);

        assertThat(outcome(assessment, "wheel.soft", "rear").missing())
                .containsExactly(new Missing("wheel.marked", "rear", "worn away"));
        assertThat(outcome(assessment, "chain.worn", "").missing()).containsExactly(new Missing("chain.wear", "", ""));
        assertThat(outcome(assessment, "chain.worn", "").mayBe()).contains(Urgency.NOW);
    }

    @Test
    void the_highest_degree_found_is_shown_with_its_own_limit_and_words() {
        Finding worn = finding(assess(soundBut(new ChainWear(percent("0.7")))), "chain.worn");
        Finding far = finding(assess(soundBut(new ChainWear(percent("1.2")))), "chain.worn");

        assertThat(worn.band()).isEqualTo("worn");
        assertThat(worn.urgency()).isEqualTo(Urgency.SEASON);
        assertThat(worn.seen()).containsExactly("It has stretched by 0.7 %, over 0.5 %.");
        assertThat(far.band()).isEqualTo("far");
        assertThat(far.urgency()).isEqualTo(Urgency.NOW);
        assertThat(far.seen()).containsExactly("It has stretched by 1.2 %, over 1 %.");
        assertThat(far.limits())
                .containsExactly(new LimitUsed(
                        "chain.wear-far",
                        "1 %",
                        "the stretch at which a chain eats the sprockets",
                        "common practice",
                        "standard practice"));
        assertThat(far.evidence()).containsExactly(new ChainWear(percent("1.2")));
        assertThat(far.remedy()).isEqualTo("new-chain");
        assertThat(far.why()).isEqualTo("It jumps.");
        assertThat(far.action()).isEqualTo("Fit another.");
        assertThat(word(assess(soundBut(new ChainWear(percent("0.5")))), "chain.worn", ""))
                .as("exactly on the limit")
                .isEqualTo(Word.IN_ORDER);
    }

    @Test
    void a_limit_is_said_to_be_set_by_what_it_stands_on() {
        Assessment assessment = assess(soundBut(
                new PadThickness("B", Quantity.of(1, Unit.MILLIMETRE)),
                new SaddleRaised(Quantity.of(9, Unit.INCH), "nobody", DAY),
                new SpokesMissing("rear", 3)));

        assertThat(finding(assessment, "brake.pad").limits().get(0).setBy()).isEqualTo("an invented standard");
        assertThat(finding(assessment, "saddle.high").limits().get(0).setBy()).isEqualTo("calculation");
        assertThat(finding(assessment, "wheel.spokes").limits().get(0).setBy()).isEqualTo("this rulebook's own choice");
    }

    @Test
    void findings_stand_by_urgency_then_consequence_then_rule_then_subject() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 9);
        Comparator<Finding> order = (one, other) -> {
            int by = one.urgency().ordinal() - other.urgency().ordinal();
            by = by != 0
                    ? by
                    : one.consequence().ordinal() - other.consequence().ordinal();
            by = by != 0 ? by : one.rule().compareTo(other.rule());
            return by != 0 ? by : one.subject().compareTo(other.subject());
        };
        int pairs = 0;
        for (int i = 0; i < 100; i++) {
            List<Finding> findings = rulebook.assess(visits.next(1, 0.1), DAY).findings();
            for (int j = 1; j < findings.size(); j++) {
                assertThat(order.compare(findings.get(j - 1), findings.get(j))).isNegative();
                pairs++;
            }
        }
        assertThat(pairs).isGreaterThan(100);

        Assessment known = assess(soundBut(
                        new FrameCrack(Crack.OPEN),
                        new PullDistance("B", Weather.DRY, Quantity.of(30, Unit.FOOT)),
                        new ChainWear(percent("2")),
                        new SaddleRaised(Quantity.of(9, Unit.INCH), "nobody", DAY),
                        new SpokesMissing("rear", 3),
                        new FrameNumber("none"))
                .fitted("wheel", State.AS_FOUND, 2)
                .tag("wheel", "front")
                .seen(new SpokesMissing("front", 4)));
        assertThat(known.findings().stream().map(f -> f.rule() + " " + f.subject()))
                .containsExactly(
                        "frame.cracked ",
                        "wheel.spokes front",
                        "wheel.spokes rear",
                        "brake.long B",
                        "saddle.high ",
                        "chain.worn ",
                        "spokes.all ",
                        "frame.unmarked ");
    }

    @Test
    void a_stop_forbids_both_gates_and_a_proof_found_wanting_only_release() {
        Assessment stop = assess(soundBut(new FrameCrack(Crack.OPEN)));
        assertThat(stop.testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(stop.testFiring().against()).containsExactly(new Ref("frame.cracked", ""));
        assertThat(stop.release().permit()).isEqualTo(Permit.FORBIDDEN);

        Assessment proof = assess(soundBut(new PullGrip("B", Weather.WET, Grip.NOT_PULLED)));
        assertThat(proof.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(proof.release().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(proof.release().against()).containsExactly(new Ref("brake.not-tried", "B"));

        Assessment late = assess(soundBut(new PullGrip("B", Weather.DRY, Grip.SLIPPED)));
        assertThat(late.testFiring().permit())
                .as("a stop of a later stage that is there")
                .isEqualTo(Permit.FORBIDDEN);

        Assessment now = assess(soundBut(new SaddleRaised(Quantity.of(9, Unit.INCH), "nobody", DAY)));
        assertThat(now.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(now.release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void an_open_stop_keeps_a_gate_from_being_known_from_its_own_stage_on() {
        Observations.Builder untried = sound();
        untried.build().answers().stream()
                .filter(a -> a.item().id().equals("pull.grip"))
                .forEach(untried::without);
        Assessment later = assess(untried);
        assertThat(later.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(later.release().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(later.release().open())
                .containsExactly(new Ref("brake.slips", "B"), new Ref("brake.not-tried", "B"));

        Observations.Builder unseen = sound();
        unseen.build().answers().stream()
                .filter(a -> a.item().id().equals("frame.crack"))
                .forEach(unseen::without);
        assertThat(assess(unseen).testFiring().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(assess(unseen).testFiring().open()).containsExactly(new Ref("frame.cracked", ""));
        assertThat(assess(unseen).wanting())
                .containsExactly(new Assessment.Wanting(
                        new Missing("frame.crack", "", ""), List.of(new Ref("frame.cracked", "")), true));

        Observations.Builder lesser = sound();
        lesser.build().answers().stream()
                .filter(a -> a.item().id().equals("chain.wear"))
                .forEach(lesser::without);
        assertThat(assess(lesser).testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assess(lesser).wanting().get(0).holdsGate()).isFalse();
    }

    @Test
    void what_is_wanting_stands_with_the_gates_first_and_then_what_settles_most() {
        Assessment empty = assess(visit());
        boolean holding = true;
        int settles = Integer.MAX_VALUE;
        for (Assessment.Wanting wanting : empty.wanting()) {
            if (holding && !wanting.holdsGate()) {
                settles = Integer.MAX_VALUE;
            }
            assertThat(wanting.holdsGate() && !holding).isFalse();
            holding = wanting.holdsGate();
            assertThat(wanting.settles().size()).isLessThanOrEqualTo(settles);
            settles = wanting.settles().size();
        }
        assertThat(empty.wanting().get(0).answer().item()).isEqualTo("brake.fitted");
        assertThat(empty.wanting()).anyMatch(wanting -> !wanting.holdsGate());
    }

    @Test
    void a_finding_is_put_right_only_by_an_answer_after_the_work() {
        Observations.Builder right = soundBut(new PadThickness("B", Quantity.of(1, Unit.MILLIMETRE)))
                .seen(new PadThickness("B", Quantity.of(6, Unit.MILLIMETRE)), State.AS_LEFT)
                .seen(new ChainSpares(3), State.AS_LEFT);
        Finding pad = finding(assess(right), "brake.pad");
        assertThat(pad.state()).isEqualTo(Standing.PUT_RIGHT);
        assertThat(pad.isStanding()).isFalse();
        assertThat(pad.retest()).containsExactly(new PadThickness("B", Quantity.of(6, Unit.MILLIMETRE)));
        assertThat(assess(right).testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assess(right).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);

        Observations.Builder open = soundBut(new PadThickness("B", Quantity.of(1, Unit.MILLIMETRE)))
                .unread("brake.pad", List.of("B"), State.AS_LEFT, "wheel is in again");
        assertThat(finding(assess(open), "brake.pad").state()).isEqualTo(Standing.STANDING);
        assertThat(word(assess(open), "brake.pad", "B")).isEqualTo(Word.UNDETERMINED);
        assertThat(assess(open).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);

        Observations.Builder still = soundBut(new PadThickness("B", Quantity.of(1, Unit.MILLIMETRE)))
                .seen(new PadThickness("B", Quantity.of("1.5", Unit.MILLIMETRE)), State.AS_LEFT);
        assertThat(finding(assess(still), "brake.pad").state()).isEqualTo(Standing.STANDING);
        assertThat(finding(assess(still), "brake.pad").seen()).containsExactly("Pad of B is 1.5 mm, under 2 mm.");
    }

    @Test
    void what_comes_up_on_the_visit_has_arisen() {
        Assessment arisen = assess(sound().seen(new FrameCrack(Crack.OPEN), State.AS_LEFT));
        assertThat(finding(arisen, "frame.cracked").state()).isEqualTo(Standing.ARISEN);
        assertThat(arisen.testFiring().permit()).isEqualTo(Permit.FORBIDDEN);

        Assessment put = assess(sound().tag("brake", "new", Presence.AS_LEFT)
                .seen(new BrakeKind("new", BrakeSort.RIM), State.AS_LEFT)
                .seen(new PadThickness("new", Quantity.of(1, Unit.MILLIMETRE)), State.AS_LEFT));
        assertThat(finding(put, "brake.pad").state()).isEqualTo(Standing.ARISEN);

        Observations.Builder unseen = sound();
        unseen.build().answers().stream()
                .filter(a -> a.item().id().equals("frame.crack"))
                .forEach(unseen::without);
        Assessment late = assess(unseen.seen(new FrameCrack(Crack.OPEN), State.AS_LEFT));
        assertThat(finding(late, "frame.cracked").state())
                .as("not known at arrival, so it may have been there")
                .isEqualTo(Standing.STANDING);
    }

    @Test
    void what_was_taken_out_is_put_right() {
        Observations.Builder builder = sound().fitted("brake", State.AS_FOUND, 2)
                .tag("brake", "old", Presence.AS_FOUND)
                .seen(new BrakeKind("old", BrakeSort.RIM))
                .seen(new PadThickness("old", Quantity.of(1, Unit.MILLIMETRE)))
                .seen(new PullGrip("old", Weather.DRY, Grip.HELD));
        Assessment assessment = assess(builder);

        assertThat(finding(assessment, "brake.pad").subject()).isEqualTo("old");
        assertThat(finding(assessment, "brake.pad").state()).isEqualTo(Standing.PUT_RIGHT);
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.outcomes()).noneMatch(o -> o.subject().equals("old"));
    }

    private static PullDistance way(Weather weather, int feet) {
        return new PullDistance("B", weather, Quantity.of(feet, Unit.FOOT));
    }

    @Test
    void a_lesser_degree_found_does_not_hide_a_worse_one_that_is_open() {
        Observations.Builder builder = soundBut(way(Weather.DRY, 30));
        builder.build().answers().stream()
                .filter(a -> a.item().id().equals("pull.distance") && a.keys().contains(Weather.WET))
                .forEach(builder::without);
        Assessment assessment = assess(builder);

        assertThat(outcome(assessment, "brake.long", "B"))
                .isEqualTo(new Outcome(
                        "brake.long",
                        "B",
                        Word.FOUND,
                        Optional.of(Urgency.STOP),
                        List.of(new Missing("pull.distance", "B/wet", ""))));
        assertThat(finding(assessment, "brake.long").urgency()).isEqualTo(Urgency.NOW);
        assertThat(assessment.release().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(assessment.release().open()).containsExactly(new Ref("brake.long", "B"));

        Outcome worst = outcome(assess(soundBut(way(Weather.WET, 30))), "brake.long", "B");
        assertThat(worst.mayBe()).as("nothing is worse").isEmpty();
        assertThat(worst.missing()).isEmpty();
    }

    @Test
    void a_worse_degree_stands_until_something_rules_it_out() {
        Observations.Builder found = soundBut(way(Weather.WET, 40), way(Weather.DRY, 30));
        Assessment open = assess(found.build().toBuilder()
                .seen(way(Weather.DRY, 25), State.AS_LEFT)
                .unread("pull.distance", List.of("B", Weather.WET), State.AS_LEFT, "it had dried"));
        assertThat(word(open, "brake.long", "B")).isEqualTo(Word.FOUND);
        assertThat(finding(open, "brake.long").urgency()).isEqualTo(Urgency.STOP);
        assertThat(finding(open, "brake.long").state()).isEqualTo(Standing.STANDING);
        assertThat(open.release().permit()).isEqualTo(Permit.FORBIDDEN);

        Assessment lesser = assess(found.build().toBuilder()
                .seen(way(Weather.DRY, 25), State.AS_LEFT)
                .seen(way(Weather.WET, 15), State.AS_LEFT));
        assertThat(finding(lesser, "brake.long").urgency()).isEqualTo(Urgency.NOW);
        assertThat(finding(lesser, "brake.long").state()).isEqualTo(Standing.STANDING);
        assertThat(lesser.release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);

        Assessment crack =
                assess(soundBut(new FrameCrack(Crack.OPEN)).seen(new FrameCrack(Crack.HAIRLINE), State.AS_LEFT));
        assertThat(finding(crack, "frame.cracked").urgency()).isEqualTo(Urgency.WATCH);
        assertThat(crack.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void a_later_stop_that_is_no_longer_seen_forbids_release_and_not_firing() {
        Assessment assessment = assess(soundBut(new PullGrip("B", Weather.DRY, Grip.SLIPPED))
                .unread("pull.grip", List.of("B", Weather.DRY), State.AS_LEFT, "not pulled again"));
        assertThat(finding(assessment, "brake.slips").state()).isEqualTo(Standing.STANDING);
        assertThat(assessment.testFiring().permit())
                .as("firing is how it is tried again")
                .isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.release().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void a_dispute_is_shown_and_changes_nothing() {
        Observations.Builder builder = soundBut(new FrameCrack(Crack.OPEN))
                .dispute(new Observations.Dispute("frame.cracked", "B", "another one"))
                .dispute(new Observations.Dispute("frame.cracked", "", "it is a scratch"));
        Assessment assessment = assess(builder);

        assertThat(finding(assessment, "frame.cracked").dispute()).isEqualTo("it is a scratch");
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(finding(assess(soundBut(new FrameCrack(Crack.OPEN))), "frame.cracked")
                        .dispute())
                .isEmpty();
    }

    @Test
    void a_cause_is_put_forward_when_its_evidence_is_enough() {
        Cause drive = assess(soundBut(new ChainWear(percent("2")), new RideNoise(Noise.GRINDING)))
                .diagnoses()
                .get(0);
        assertThat(drive.id()).isEqualTo("worn-drive");
        assertThat(drive.points())
                .containsExactly(
                        new Said("ride.grinding", "", "it grinds on the road"),
                        new Said("chain.worn", "", "the chain has stretched"));
        assertThat(drive.against()).containsExactly(new Said("chain.short", "", "the chain is long enough"));
        assertThat(drive.weight()).isEqualTo(2);
        assertThat(drive.settledBy()).isEqualTo("chain.wear");
        assertThat(assess(soundBut(new RideNoise(Noise.GRINDING))).diagnoses())
                .as("less than enough")
                .isEmpty();
    }

    @Test
    void a_cause_about_equipment_takes_the_evidence_of_each_piece_for_itself() {
        Assessment assessment =
                assess(soundBut(new RideNoise(Noise.GRINDING), new WheelTrued("rear", DAY.minusYears(2)))
                        .fitted("wheel", State.AS_FOUND, 2)
                        .tag("wheel", "front")
                        .seen(new SpokesMissing("front", 4))
                        .seen(new WheelTrued("front", DAY.minusYears(2))));
        assertThat(assessment.diagnoses().stream().map(c -> c.id() + " " + c.subject() + " " + c.weight()))
                .containsExactly("bad-rim front 5", "bad-rim rear 2");
        assertThat(assessment.diagnoses().get(1).against())
                .containsExactly(new Said("wheel.soft", "rear", "the tyre is hard"));
    }

    @Test
    void what_was_put_right_still_speaks_for_its_cause() {
        Assessment assessment = assess(soundBut(new ChainWear(percent("2")), new RideNoise(Noise.GRINDING))
                .seen(new ChainWear(percent("0")), State.AS_LEFT));
        assertThat(finding(assessment, "chain.worn").state()).isEqualTo(Standing.PUT_RIGHT);
        assertThat(assessment.diagnoses()).hasSize(1);
    }

    @Test
    void equal_quantities_in_other_units_give_equal_outcomes() {
        Optional<Urgency> none = Optional.empty();
        for (String pad : List.of("2 mm", "0.2 cm")) {
            Assessment on = assess(
                    soundBut(new PadThickness("B", Quantity.parse(pad, gaugeglass.engine.quantity.Dimension.LENGTH))));
            assertThat(outcome(on, "brake.pad", "B"))
                    .isEqualTo(new Outcome("brake.pad", "B", Word.IN_ORDER, none, List.of()));
        }
        // 50 mm over 25.4 is the same length in inches exactly; 2 mm is 10/127 in.
        Quantity inches = Quantity.of(gaugeglass.engine.quantity.Rational.of(10, 127), Unit.INCH);
        assertThat(word(assess(soundBut(new PadThickness("B", inches))), "brake.pad", "B"))
                .isEqualTo(Word.IN_ORDER);
        Quantity less = Quantity.of(gaugeglass.engine.quantity.Rational.of(9999999, 127000000), Unit.INCH);
        assertThat(word(assess(soundBut(new PadThickness("B", less))), "brake.pad", "B"))
                .isEqualTo(Word.FOUND);
    }
}
