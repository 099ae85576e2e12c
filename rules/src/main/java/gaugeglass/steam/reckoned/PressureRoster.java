package gaugeglass.steam.reckoned;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Controls.ControlDuty;
import gaugeglass.steam.observed.Controls.ControlProofRecord;
import gaugeglass.steam.observed.Controls.ControlRole;
import gaugeglass.steam.observed.Controls.ProofRecord;
import gaugeglass.steam.observed.Gauges.GaugeRole;
import gaugeglass.steam.observed.Gauges.GaugeUse;
import java.util.List;

/** Which roles the gauges and pressure controls of a boiler fill between them. */
public final class PressureRoster {
    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL =
            List.of(new OwnGauge(), new LowRange(), new Operating(), new HighLimit(), new Proven());

    private PressureRoster() {}

    /** Whether any of those fitted fills a role. */
    public enum RoleFilled {
        FILLED,
        NOT_FILLED
    }

    private static RoleFilled filled(boolean any) {
        return any ? RoleFilled.FILLED : RoleFilled.NOT_FILLED;
    }

    /** Whether the boiler has its own gauge. */
    @Item(
            id = "gauges.boilers-own",
            look = "One of all gauges suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the boiler a gauge of its own?")
    public record BoilersOwnGauge(RoleFilled role) {}

    /** Whether the boiler has a low-range gauge. */
    @Item(
            id = "gauges.low-range",
            look = "One of all gauges suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the boiler a low-range gauge?")
    public record LowRangeGauge(RoleFilled role) {}

    /** Whether the boiler has an operating control. */
    @Item(
            id = "controls.operating",
            look = "One of all controls suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the boiler an operating pressure control?")
    public record OperatingControl(RoleFilled role) {}

    /** Whether the boiler has a high limit. */
    @Item(
            id = "controls.limit",
            look = "One of all controls suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the boiler a high-limit control?")
    public record HighLimitControl(RoleFilled role) {}

    /** Whether the boiler has a high limit that was proven last season. */
    @Item(
            id = "controls.proven-limit",
            look = "One of all high limits suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the boiler a high limit that was proven last season?")
    public record ProvenLimit(RoleFilled role) {}

    /** Looks for the boiler's own gauge. */
    public static final class OwnGauge implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return BoilersOwnGauge.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(GaugeRole.class);
        }

        @Override
        public List<BoilersOwnGauge> work(Seen seen, String which) {
            return List.of(new BoilersOwnGauge(
                    filled(seen.any(GaugeRole.class, gauge -> gauge.role() == GaugeUse.BOILERS_OWN))));
        }
    }

    /** Looks for a low-range gauge. */
    public static final class LowRange implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return LowRangeGauge.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(GaugeRole.class);
        }

        @Override
        public List<LowRangeGauge> work(Seen seen, String which) {
            return List.of(
                    new LowRangeGauge(filled(seen.any(GaugeRole.class, gauge -> gauge.role() == GaugeUse.LOW_RANGE))));
        }
    }

    /** Looks for an operating control. */
    public static final class Operating implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return OperatingControl.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ControlRole.class);
        }

        @Override
        public List<OperatingControl> work(Seen seen, String which) {
            return List.of(new OperatingControl(
                    filled(seen.any(ControlRole.class, control -> control.role() == ControlDuty.OPERATING))));
        }
    }

    /** Looks for a high limit. */
    public static final class HighLimit implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return HighLimitControl.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ControlRole.class);
        }

        @Override
        public List<HighLimitControl> work(Seen seen, String which) {
            return List.of(new HighLimitControl(
                    filled(seen.any(ControlRole.class, control -> control.role() == ControlDuty.HIGH_LIMIT))));
        }
    }

    /** Looks for a high limit that was proven last season. */
    public static final class Proven implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ProvenLimit.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ControlRole.class, ControlProofRecord.class);
        }

        @Override
        public List<ProvenLimit> work(Seen seen, String which) {
            boolean proven = false;
            for (String tag : seen.tags("control")) {
                proven |= seen.of(ControlRole.class, tag).role() == ControlDuty.HIGH_LIMIT
                        && seen.of(ControlProofRecord.class, tag).proof() == ProofRecord.LAST_SEASON;
            }
            return List.of(new ProvenLimit(filled(proven)));
        }
    }
}
