package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
        talk.say("A new inspection, " + today + ". Five lines, then the first question. ? tells more, q leaves.");
        String siteId = last.map(Inspection::siteId)
                .orElseGet(() -> needed("Site, as a short name that stays the same over years > "));
        String siteName =
                last.map(Inspection::siteName).orElseGet(() -> line("Site, as people call it (Enter for none) > "));
        last.ifPresent(one -> talk.say("Site: " + siteId + (siteName.isEmpty() ? "" : ", " + siteName)));
        String by = needed("Who makes the visit > ");
        List<Visited> units = new ArrayList<>();
        List<Earlier> earlier = new ArrayList<>();
        if (last.isPresent()) {
            for (Judged.Unit unit : new Judge(rulebook, Optional.empty())
                    .judge(last.get().file(), last.get())
                    .units()) {
                if (unit.visited().id().isEmpty()) {
                    continue;
                }
                List<Earlier> found = found(unit, last.get());
                earlier.addAll(found);
                units.add(new Visited(
                        unit.visited().name(),
                        Observations.of(rulebook.vocabulary(), unit.visited().id())
                                .earlier(found)
                                .build()));
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
            } while (isYes("Another boiler on this visit? (y or n, Enter for no) > "));
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
                rulebook.judgedBy(),
                List.of());
    }

    /** What last visit found of a unit, with what the owner decided: what still stood, and what was put right on it. */
    private static List<Earlier> found(Judged.Unit unit, Inspection last) {
        List<Earlier> earlier = new ArrayList<>();
        for (Finding finding : unit.assessment().findings()) {
            earlier.add(found(finding, unit.visited().id(), last));
        }
        return earlier;
    }

    private static Earlier found(Finding finding, String unit, Inspection last) {
        // What was done before and was found all the same was found anew.
        Optional<Earlier> before = last.earlier().stream()
                .filter(one -> one.rule().equals(finding.rule())
                        && one.unit().equals(unit)
                        && one.subject().equals(finding.subject())
                        && one.decision() != Decision.DONE)
                .findFirst();
        Earlier found = before.orElseGet(() -> new Earlier(
                finding.rule(), unit, finding.subject(), finding.urgency().word(), last.date(), Decision.NONE, "", ""));
        if (!finding.isStanding()) {
            String by = last.by().isEmpty() ? "whoever made the visit" : last.by();
            return decided(found, Decision.DONE, by, last.date());
        }
        return last.decisions().stream()
                .filter(one -> one.isAbout(finding.rule(), unit, finding.subject()))
                .findFirst()
                .map(one -> decided(found, one.decision(), one.by(), one.on()))
                .orElse(found);
    }

    private static Earlier decided(Earlier found, Decision decision, String by, LocalDate on) {
        return new Earlier(
                found.rule(),
                found.unit(),
                found.subject(),
                found.urgency(),
                found.foundOn(),
                decision,
                by,
                on.toString());
    }

    /**
     * Asks what to do with a file that has lost its end.
     *
     * @return false where the person leaves
     */
    boolean goesOnCutOff(VisitFile file, LocalDate today) throws IOException {
        String name = String.valueOf(file.path().getFileName());
        String before = String.valueOf(file.before().getFileName());
        talk.say("THE END OF " + name + " IS MISSING. It was written by a walk, and does not end as a walk ends it: it"
                + " was cut off, or changed in an editor that left the last line out.");
        Optional<Inspection> left = Optional.empty();
        try {
            left = Optional.of(file.read(today));
        } catch (Mistakes e) {
            talk.say("It cannot be read any more: " + e.all().get(0).message());
        }
        left.ifPresent(some -> talk.say(name + " holds " + answers(some) + " answers."));
        List<String> ways = new ArrayList<>();
        if (file.hasBefore()) {
            talk.say(before + ", the state before the last answer, holds " + answers(file.readBefore(today)) + ".");
            talk.say("   1  go on from " + before + "; " + name + " is kept beside it");
            ways.add("1");
        } else {
            talk.say("There is no state before it here (" + before + ").");
        }
        if (left.isPresent()) {
            talk.say("   2  go on with " + name + " as it is");
            ways.add("2");
        }
        talk.say("   q  leave everything as it is");
        ways.add("q");
        while (true) {
            String typed = talk.line("> ").strip();
            if (typed.equals("q") || typed.equals(".q")) {
                return false;
            }
            if (!ways.contains(typed)) {
                talk.say("One of " + String.join(", ", ways) + ".");
            } else {
                if (typed.equals("1")) {
                    talk.say("What was cut off is in " + file.restore().getFileName() + ".");
                }
                return true;
            }
        }
    }

    private static int answers(Inspection inspection) {
        int answers = inspection.site().size();
        for (Visited unit : inspection.units()) {
            answers += (int) unit.observations().answers().stream()
                    .filter(answer -> !inspection.site().contains(answer))
                    .count();
        }
        return answers;
    }

    /** A line that is no order. */
    private String line(String prompt) {
        while (true) {
            String text = talk.line(prompt).strip();
            switch (text) {
                case "?", ".?" -> help();
                case "q", ".q" -> throw new Talk.Ended();
                default -> {
                    return text;
                }
            }
        }
    }

    private void help() {
        talk.say("The site's short name and the boiler's tag join this visit to those of other years: take those of the"
                + " last file, or what is written on the boiler. Letters, digits and hyphens do best, as church-hall or"
                + " B1. What people call the site, and who you are, go on the report.");
        talk.say("Then comes one screen after another, and every answer is on disk before the next. q leaves; walk the"
                + " same file to go on.");
    }

    private boolean isYes(String prompt) {
        while (true) {
            switch (line(prompt).toLowerCase(Locale.ROOT)) {
                case "y", "yes" -> {
                    return true;
                }
                case "", "n", "no" -> {
                    return false;
                }
                default -> talk.say("y for yes, n or Enter for no.");
            }
        }
    }

    private String needed(String prompt) {
        while (true) {
            String text = line(prompt);
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
            String text = line(prompt);
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
