package gaugeglass.cli.walk;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Changes to an inspection, each giving a new one; an answer about the site is every unit's. */
final class Visit {
    private Visit() {}

    /** The inspection with an answer in the place of whatever stood there. */
    static Inspection with(Inspection inspection, int unit, Answer answer) {
        return changed(inspection, unit, answer.item(), builder -> put(builder, answer), list -> {
            list.removeIf(old -> isSamePlace(old, answer));
            list.add(answer);
        });
    }

    /** The inspection with how many of a kind there are, and their tags. */
    static Inspection counted(
            Inspection inspection, int unit, Kind kind, State state, int number, List<String> newTags) {
        return unit(inspection, unit, builder -> {
            builder.fitted(kind.id(), state, number);
            for (String tag : newTags) {
                builder.tag(
                        kind.id(), tag, state == State.AS_LEFT ? Roster.Presence.AS_LEFT : Roster.Presence.THROUGHOUT);
            }
            return builder;
        });
    }

    static Inspection uncounted(Inspection inspection, int unit, Kind kind, String reason) {
        return unit(inspection, unit, builder -> builder.uncounted(kind.id(), reason));
    }

    static Inspection disputed(Inspection inspection, int unit, Observations.Dispute dispute) {
        return unit(inspection, unit, builder -> builder.dispute(dispute));
    }

    /** The inspection with the checklist that a unit is walked by. */
    static Inspection walkedBy(Inspection inspection, int unit, String checklist) {
        List<Inspection.Visited> units = new ArrayList<>(inspection.units());
        Inspection.Visited old = units.get(unit);
        units.set(unit, new Inspection.Visited(old.name(), checklist, old.observations()));
        return of(inspection, inspection.site(), units);
    }

    private interface Listed {
        void change(List<Answer> list);
    }

    private static Inspection changed(
            Inspection inspection, int unit, ItemType item, UnaryOperator<Observations.Builder> change, Listed site) {
        boolean isSite = inspection
                .units()
                .get(unit)
                .observations()
                .vocabulary()
                .site()
                .id()
                .equals(item.kind());
        if (!isSite) {
            return unit(inspection, unit, change);
        }
        List<Answer> answers = new ArrayList<>(inspection.site());
        site.change(answers);
        Inspection changed = inspection;
        for (int i = 0; i < inspection.units().size(); i++) {
            changed = unit(changed, i, change);
        }
        return of(changed, answers, changed.units());
    }

    private static Inspection unit(Inspection inspection, int unit, UnaryOperator<Observations.Builder> change) {
        List<Inspection.Visited> units = new ArrayList<>(inspection.units());
        Inspection.Visited old = units.get(unit);
        units.set(
                unit,
                new Inspection.Visited(
                        old.name(),
                        old.checklist(),
                        change.apply(old.observations().toBuilder()).build()));
        return of(inspection, inspection.site(), units);
    }

    private static Inspection of(Inspection old, List<Answer> site, List<Inspection.Visited> units) {
        return new Inspection(
                old.file(),
                old.format(),
                old.siteId(),
                old.siteName(),
                site,
                old.date(),
                old.by(),
                old.started(),
                old.note(),
                units,
                old.earlier(),
                old.decisions(),
                old.judgedBy(),
                old.remarks());
    }

    private static Observations.Builder put(Observations.Builder builder, Answer answer) {
        return builder.without(answer).put(answer);
    }

    private static boolean isSamePlace(Answer one, Answer other) {
        return one.item().id().equals(other.item().id())
                && one.keys().equals(other.keys())
                && one.state() == other.state();
    }
}
