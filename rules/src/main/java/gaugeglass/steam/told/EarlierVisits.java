package gaugeglass.steam.told;

import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.Telling;
import gaugeglass.steam.observed.LastVisit.ControlLastVisit;
import gaugeglass.steam.observed.LastVisit.CutoffLastVisit;
import gaugeglass.steam.observed.LastVisit.Deferral;
import gaugeglass.steam.observed.LastVisit.DeferredSince;
import gaugeglass.steam.observed.LastVisit.FeederLastVisit;
import gaugeglass.steam.observed.LastVisit.LastVisitResult;
import gaugeglass.steam.observed.LastVisit.OwnerDecisions;
import gaugeglass.steam.observed.LastVisit.OwnerWord;
import gaugeglass.steam.observed.LastVisit.PutOff;
import gaugeglass.steam.observed.LastVisit.SafetyValveLastVisit;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/** What the findings that earlier visits left tell of decisions, of what is put off, and of devices that failed. */
public final class EarlierVisits {
    /** The checks that tell of a device that it failed, by the kind of device. */
    static final Set<String> CUTOFF_FAILED = Set.of(
            "cutoff.failed-to-stop-burner",
            "cutoff.float-seized",
            "cutoff.float-unmoved",
            "cutoff.probe-unresponsive",
            "cutoff.slow-drain-failed");

    static final Set<String> CONTROL_FAILED = Set.of("control.failed-to-stop-burner");
    static final Set<String> SAFETY_VALVE_FAILED = Set.of("relief.leaks-or-sticks");
    static final Set<String> FEEDER_FAILED = Set.of("feeder.locked-out", "feeder.no-delivery");

    /** All that is told. */
    public static final List<Telling> ALL = List.of(
            new Decided(),
            new Deferred(),
            new Since(),
            new FeederFailed(),
            new Failed<>(CutoffLastVisit.class, CUTOFF_FAILED, CutoffLastVisit::new),
            new Failed<>(ControlLastVisit.class, CONTROL_FAILED, ControlLastVisit::new),
            new Failed<>(SafetyValveLastVisit.class, SAFETY_VALVE_FAILED, SafetyValveLastVisit::new));

    private EarlierVisits() {}

    private static boolean isDeferred(Earlier one) {
        return one.decision() == Decision.DEFERRED;
    }

    /** A decision counts with who made it and when. */
    private static boolean isDecided(Earlier one) {
        return one.decision() != Decision.NONE
                && !one.decidedBy().isEmpty()
                && !one.decidedOn().isEmpty();
    }

    private static final class Decided implements Telling {
        @Override
        public Class<? extends Record> gives() {
            return OwnerDecisions.class;
        }

        @Override
        public List<OwnerDecisions> tell(List<Earlier> earlier, List<String> tags) {
            OwnerWord word = earlier.isEmpty()
                    ? OwnerWord.NOTHING_WAS_FOUND
                    : earlier.stream().allMatch(EarlierVisits::isDecided)
                            ? OwnerWord.ALL_DECIDED
                            : OwnerWord.SOME_NOT_DECIDED;
            return List.of(new OwnerDecisions(word));
        }
    }

    private static final class Deferred implements Telling {
        @Override
        public Class<? extends Record> gives() {
            return Deferral.class;
        }

        @Override
        public List<Deferral> tell(List<Earlier> earlier, List<String> tags) {
            boolean some = earlier.stream().anyMatch(EarlierVisits::isDeferred);
            return List.of(new Deferral(some ? PutOff.SOMETHING_DEFERRED : PutOff.NOTHING_DEFERRED));
        }
    }

    private static final class Since implements Telling {
        @Override
        public Class<? extends Record> gives() {
            return DeferredSince.class;
        }

        @Override
        public List<DeferredSince> tell(List<Earlier> earlier, List<String> tags) {
            return earlier.stream()
                    .filter(EarlierVisits::isDeferred)
                    .map(Earlier::foundOn)
                    .min(LocalDate::compareTo)
                    .map(DeferredSince::new)
                    .stream()
                    .toList();
        }
    }

    private static LastVisitResult result(List<Earlier> earlier, Set<String> rules, String subject) {
        List<Earlier> failures = earlier.stream()
                .filter(one -> rules.contains(one.rule()) && one.subject().equals(subject))
                .toList();
        if (failures.isEmpty()) {
            return LastVisitResult.DID_NOT_FAIL;
        }
        // What was mended and what was left may both stand there; only what was mended can fail again.
        return failures.stream().anyMatch(one -> one.decision() == Decision.DONE)
                ? LastVisitResult.FAILED_AND_MENDED
                : LastVisitResult.FAILED_AND_LEFT;
    }

    private static final class FeederFailed implements Telling {
        @Override
        public Class<? extends Record> gives() {
            return FeederLastVisit.class;
        }

        @Override
        public List<FeederLastVisit> tell(List<Earlier> earlier, List<String> tags) {
            return List.of(new FeederLastVisit(result(earlier, FEEDER_FAILED, "")));
        }
    }

    /** Whether each device of a counted kind failed. */
    private record Failed<T extends Record>(
            Class<T> gives, Set<String> rules, BiFunction<String, LastVisitResult, T> answer) implements Telling {
        @Override
        public List<T> tell(List<Earlier> earlier, List<String> tags) {
            return tags.stream()
                    .map(tag -> answer.apply(tag, result(earlier, rules, tag)))
                    .toList();
        }
    }
}
