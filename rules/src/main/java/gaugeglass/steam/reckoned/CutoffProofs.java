package gaugeglass.steam.reckoned;

import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.CutoffTests.CutoffTestFloat;
import gaugeglass.steam.observed.CutoffTests.CutoffTestHeatCall;
import gaugeglass.steam.observed.CutoffTests.CutoffTestPressure;
import gaugeglass.steam.observed.CutoffTests.CutoffTestResult;
import gaugeglass.steam.observed.CutoffTests.FlameResult;
import gaugeglass.steam.observed.CutoffTests.FloatMotion;
import gaugeglass.steam.observed.CutoffTests.HeatCallState;
import gaugeglass.steam.observed.CutoffTests.Method;
import gaugeglass.steam.observed.CutoffTests.PressureState;
import java.util.List;

/**
 * What today's tests prove of each cutoff, in three grades that stand on one another: its contacts work, falling water
 * moves its float, falling water puts the flame out.
 *
 * <p>Each grade is a fact of its own, so that a proof that was seen counts whatever else is missing.
 */
public final class CutoffProofs {
    /** In the order in which they use one another's results. */
    public static final List<Reckoning> ALL =
            List.of(new FlameByOne(), new FloatByOne(), new Flame(), new Float(), new Contacts());

    private CutoffProofs() {}

    /** Whether a proof was given. */
    public enum Proof {
        GIVEN,
        NOT_GIVEN
    }

    /** Whether falling water put the flame out in one test, and nothing else can have done it. */
    @Item(
            id = "cutoff-test.flame-proof",
            look =
                    "Given by a bowl drain or slow drain at which the flame went out, with the call for heat held and the pressure below the cut-out.",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Whether this test proves that falling water puts the flame out.")
    public record CutoffTestFlameProof(@Of String which, @Of Method method, Proof proof) {}

    /** Whether falling water moved the float in one test. */
    @Item(
            id = "cutoff-test.float-proof",
            look = "Given by any test but the hand press in which the float moved.",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Whether this test proves that falling water moves the float.")
    public record CutoffTestFloatProof(@Of String which, @Of Method method, Proof proof) {}

    /** Whether any of today's tests proves that falling water puts the flame out. */
    @Item(
            id = "cutoff.flame-proof",
            look = "Given if one of today's tests of this cutoff gives it.",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "Whether today's tests prove that falling water puts the flame out.")
    public record CutoffFlameProof(@Of String which, Proof proof) {}

    /** Whether any of today's tests proves that falling water moves the float. */
    @Item(
            id = "cutoff.float-proof",
            look = "Given if one of today's tests of this cutoff gives it.",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "Whether today's tests prove that falling water moves the float.")
    public record CutoffFloatProof(@Of String which, Proof proof) {}

    /** Whether the cutoff's contacts were tried by hand today. */
    @Item(
            id = "cutoff.contact-proof",
            look = "Given if the hand press was made.",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "Whether the cutoff's contacts were tried by hand today.")
    public record CutoffContactProof(@Of String which, Proof proof) {}

    private static Proof proof(boolean given) {
        return given ? Proof.GIVEN : Proof.NOT_GIVEN;
    }

    /** The tag of a test's cutoff. */
    private static String tag(String which) {
        return which.substring(0, which.lastIndexOf('/'));
    }

    /** The way of testing. */
    private static Method method(String which) {
        String word = which.substring(which.lastIndexOf('/') + 1);
        for (Method method : Method.values()) {
            if (Words.of(method).equals(word)) {
                return method;
            }
        }
        throw new IllegalStateException("no way of testing a cutoff is called " + word);
    }

    private static final class FlameByOne implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return CutoffTestFlameProof.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffTestResult.class, CutoffTestHeatCall.class, CutoffTestPressure.class);
        }

        @Override
        public List<CutoffTestFlameProof> work(Seen seen, String which) {
            String tag = tag(which);
            Method method = method(which);
            boolean given = (method == Method.BOWL_DRAIN || method == Method.SLOW_DRAIN)
                    && seen.of(CutoffTestResult.class, tag, method).result() == FlameResult.FLAME_OUT
                    && seen.of(CutoffTestHeatCall.class, tag, method).state() == HeatCallState.HELD
                    && seen.of(CutoffTestPressure.class, tag, method).state() == PressureState.BELOW_CUT_OUT;
            return List.of(new CutoffTestFlameProof(tag, method, proof(given)));
        }
    }

    private static final class FloatByOne implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return CutoffTestFloatProof.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffTestResult.class, CutoffTestFloat.class);
        }

        @Override
        public List<CutoffTestFloatProof> work(Seen seen, String which) {
            String tag = tag(which);
            Method method = method(which);
            boolean given = method != Method.HAND_PRESS
                    && seen.of(CutoffTestResult.class, tag, method).result() != FlameResult.NOT_DONE
                    && seen.of(CutoffTestFloat.class, tag, method).motion() == FloatMotion.MOVED;
            return List.of(new CutoffTestFloatProof(tag, method, proof(given)));
        }
    }

    private static final class Flame implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return CutoffFlameProof.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffTestFlameProof.class);
        }

        @Override
        public List<CutoffFlameProof> work(Seen seen, String which) {
            return List.of(new CutoffFlameProof(
                    which, proof(seen.any(CutoffTestFlameProof.class, which, test -> test.proof() == Proof.GIVEN))));
        }
    }

    private static final class Float implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return CutoffFloatProof.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffTestFloatProof.class);
        }

        @Override
        public List<CutoffFloatProof> work(Seen seen, String which) {
            return List.of(new CutoffFloatProof(
                    which, proof(seen.any(CutoffTestFloatProof.class, which, test -> test.proof() == Proof.GIVEN))));
        }
    }

    private static final class Contacts implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return CutoffContactProof.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffTestResult.class);
        }

        @Override
        public List<CutoffContactProof> work(Seen seen, String which) {
            FlameResult result =
                    seen.of(CutoffTestResult.class, which, Method.HAND_PRESS).result();
            return List.of(new CutoffContactProof(which, proof(result != FlameResult.NOT_DONE)));
        }
    }
}
