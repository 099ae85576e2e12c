package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.Observations;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The questions before the first question: where, what, who, and by which checklist. */
final class Begin {
    private final Talk talk;
    private final Rulebook rulebook;
    private final Checklists checklists;

    Begin(Talk talk, Rulebook rulebook, Checklists checklists) {
        this.talk = talk;
        this.rulebook = rulebook;
        this.checklists = checklists;
    }

    /** A new inspection; what last visit's file tells of identity is taken from there. */
    Inspection inspection(String file, LocalDate today, String started, Optional<Inspection> last) {
        talk.say("A new inspection, " + today + ".");
        String siteId = last.map(Inspection::siteId)
                .orElseGet(() -> needed("Site, as a short name that stays the same over years > "));
        String siteName = last.map(Inspection::siteName)
                .orElseGet(() ->
                        talk.line("Site, as people call it (Enter for none) > ").strip());
        last.ifPresent(one -> talk.say("Site: " + siteId + (siteName.isEmpty() ? "" : ", " + siteName)));
        String by = needed("Who makes the visit > ");
        List<Visited> units = new ArrayList<>();
        List<Inspection.Earlier> earlier = new ArrayList<>();
        if (last.isPresent()) {
            for (Visited unit : last.get().units()) {
                units.add(new Visited(
                        unit.name(),
                        Observations.of(rulebook.vocabulary(), unit.id()).build()));
                earlier.addAll(found(unit, last.get()));
            }
        } else {
            do {
                String id = needed("Boiler, as the tag on it says > ");
                if (units.stream().anyMatch(unit -> unit.id().equals(id))) {
                    talk.say("\"" + id + "\" is there already.");
                } else {
                    units.add(new Visited(
                            "", Observations.of(rulebook.vocabulary(), id).build()));
                }
            } while (talk.line("Another boiler on this visit? (y, Enter for no) > ")
                    .strip()
                    .equalsIgnoreCase("y"));
        }
        return new Inspection(
                file,
                Inspection.FORMAT,
                siteId,
                siteName,
                List.of(),
                today,
                by,
                started,
                "",
                units,
                earlier,
                List.of(),
                List.of());
    }

    /** What stood at the end of last visit, with what the owner decided then. */
    private List<Inspection.Earlier> found(Visited unit, Inspection last) {
        List<Inspection.Earlier> earlier = new ArrayList<>();
        Assessment assessment = rulebook.assess(unit.observations(), last.date());
        for (Finding finding : assessment.findings()) {
            if (finding.isStanding()) {
                earlier.add(last.earlier().stream()
                        .filter(one -> one.rule().equals(finding.rule())
                                && one.unit().equals(unit.id())
                                && one.subject().equals(finding.subject()))
                        .findFirst()
                        .orElseGet(() -> new Inspection.Earlier(
                                finding.rule(),
                                unit.id(),
                                finding.subject(),
                                finding.urgency().word(),
                                last.date(),
                                Inspection.Decision.NONE,
                                "",
                                "")));
            }
        }
        return earlier;
    }

    private String needed(String prompt) {
        while (true) {
            String text = talk.line(prompt).strip();
            if (!text.isEmpty() && text.indexOf('/') < 0 && text.length() <= 60) {
                return text;
            }
            talk.say("This is needed, without a slash and not longer than 60 letters.");
        }
    }

    /** Which boiler is walked, where there are several. */
    int unit(Inspection inspection) {
        if (inspection.units().size() == 1) {
            return 0;
        }
        for (int i = 0; i < inspection.units().size(); i++) {
            Visited unit = inspection.units().get(i);
            talk.say("   " + (i + 1) + "  " + unit.id() + (unit.name().isEmpty() ? "" : ", " + unit.name()) + ": "
                    + unit.observations().answers().size() + " answers");
        }
        return number("Which boiler > ", inspection.units().size());
    }

    /** By which checklist, where the file does not say. */
    Checklist checklist() {
        List<Checklist> all = new ArrayList<>(checklists.all());
        for (int i = 0; i < all.size(); i++) {
            talk.say("   " + (i + 1) + "  " + all.get(i).title());
        }
        return all.get(number("Which checklist > ", all.size()));
    }

    private int number(String prompt, int most) {
        while (true) {
            String text = talk.line(prompt).strip();
            try {
                int number = Integer.parseInt(text);
                if (number >= 1 && number <= most) {
                    return number - 1;
                }
            } catch (NumberFormatException e) {
                // said below
            }
            talk.say("A number from 1 to " + most + ".");
        }
    }
}
