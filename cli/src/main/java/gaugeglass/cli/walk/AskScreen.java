package gaugeglass.cli.walk;

import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.cli.report.TextReport;
import gaugeglass.cli.report.Urgencies;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a question and a finding look like. */
final class AskScreen {
    /** How many rows a screen has for what is asked; the prompt and what was said last stand on the others. */
    static final int ROOM = 21;

    private static final int BAR = 20;
    private static final int COLUMNS = 78;

    /** Keeps a number and its word on one line. */
    private static final String NO_BREAK = "\u00a0";

    private static final List<String> NUMBERS = List.of("12", "120", "1200", "12000", "120000", "1.2");

    private final Talk talk;
    private final Book book;

    AskScreen(Talk talk, Book book) {
        this.talk = talk;
        this.book = book;
    }

    void head(Section section, String about, int done, int all) {
        talk.page();
        int full = all == 0 ? 0 : BAR * done / all;
        talk.say(Walk.words(section.stage()) + " [" + "#".repeat(full) + "-".repeat(BAR - full) + "] " + done + " of "
                + all + " | " + section.title() + (about.isEmpty() ? "" : " | " + about));
    }

    void caution(Caution caution) {
        talk.say("! " + caution.title() + ". " + caution.text());
    }

    /** About how many rows a text takes on the usual screen. */
    static int rows(String text) {
        return (text.length() + COLUMNS - 1) / COLUMNS;
    }

    /** One part of a panel, as short as it can be told. */
    void numbered(int number, Question question, boolean look, String hangsOn) {
        talk.say(" " + number + NO_BREAK + question.ask());
        if (look && !question.look().isEmpty()) {
            talk.say("     Look: " + question.look());
        }
        String only = hangsOn.isEmpty() ? "     " : "     only if " + hangsOn + ": ";
        if (question.item().isEmpty()) {
            talk.say(only + "how many, 0 where there are none");
            return;
        }
        List<String> parts = new ArrayList<>();
        for (Component part : question.item().get().values()) {
            parts.add(brief(part));
        }
        talk.say(only + String.join(", then ", parts));
    }

    private static String brief(Component part) {
        return switch (part.form()) {
            case CHOICE -> {
                List<String> choices = new ArrayList<>();
                for (int i = 0; i < part.choices().size(); i++) {
                    choices.add((i + 1) + NO_BREAK + part.choices().get(i).replace('-', NO_BREAK.charAt(0)));
                }
                yield String.join(NO_BREAK + " ", choices);
            }
            case QUANTITY -> "typed as " + example(part) + " (" + part.from() + " to " + part.to() + ")";
            case COUNT -> "a whole number, " + part.from() + " to " + part.to();
            case DATE -> "a date, as 2015-08-31, 2015-08 or 2015";
            case TEXT -> "in words";
        };
    }

    /** A number with its unit as somebody would type it; the same for every question, so that it suggests no answer. */
    private static String example(Component part) {
        for (String number : NUMBERS) {
            if (isBelieved(part, number)) {
                return (part.unit() == Unit.INCH && isBelieved(part, "2.5") ? "2-1/2" : number)
                        + NO_BREAK
                        + part.unit().symbol();
            }
        }
        return part.to() + NO_BREAK + part.unit().symbol();
    }

    private static boolean isBelieved(Component part, String number) {
        Quantity typed = Quantity.of(number, part.unit());
        return typed.isAtLeast(part.least()) && typed.isAtMost(part.most());
    }

    /** What to know before a section begins; said once. */
    void intro(Section section) {
        if (!section.intro().isEmpty()) {
            talk.say(section.intro());
        }
    }

    void question(Question question, Optional<Caution> caution) {
        caution.ifPresent(this::caution);
        talk.say(question.ask());
        if (!question.look().isEmpty()) {
            talk.say("   Look: " + question.look());
        }
    }

    /** How the first part is answered. */
    void choices(Question question) {
        if (question.item().isEmpty()) {
            talk.say("   A whole number, 0 where there are none.");
            return;
        }
        List<Component> parts = question.item().map(ItemType::values).orElse(List.of());
        part(parts.get(0), question);
        if (question.take() == Question.Take.EVENTS) {
            talk.say("   go: mark them by keys as you hear them.");
        } else if (question.take() == Question.Take.READINGS) {
            talk.say("   go: type readings one after another; times are kept.");
        }
        talk.say("   (? for help)");
    }

    void part(Component part) {
        part(part, null);
    }

    private void part(Component part, @org.jspecify.annotations.Nullable Question question) {
        switch (part.form()) {
            case CHOICE -> {
                for (int i = 0; i < part.choices().size(); i++) {
                    String word = part.choices().get(i);
                    String meaning = question == null ? "" : question.choices().getOrDefault(word, "");
                    talk.say("   " + (i + 1) + "  " + word.replace('-', ' ')
                            + (meaning.isEmpty() ? "" : ": " + meaning));
                }
            }
            case QUANTITY ->
                talk.say("   With its unit, as " + example(part) + " (" + part.from() + " to " + part.to() + ").");
            case COUNT -> talk.say("   A whole number, " + part.from() + " to " + part.to() + ".");
            case DATE -> talk.say("   A date as 2015-08-31; month or year alone will do: 2015-08, 2015.");
            case TEXT -> talk.say("   In words. (Orders begin with a full stop here: .s .b .u .q)");
        }
    }

    void finding(Finding finding, String title) {
        boolean stop = finding.urgency() == Urgency.STOP;
        talk.say("");
        talk.say(stop ? "*** DO NOT FIRE ***  " + title : "* " + Urgencies.heading(finding.urgency()) + ": " + title);
        finding.seen().forEach(seen -> talk.say("   Seen: " + seen));
        if (stop || finding.urgency() == Urgency.NOW) {
            talk.say("   Do: " + finding.action());
        }
        if (stop) {
            for (String id : finding.cautions()) {
                Caution caution = book.cautions().get(id);
                talk.say("   ! " + caution.title() + ". " + caution.text());
            }
        }
        talk.say("");
    }

    void line(Finding finding, String title) {
        talk.say(" - " + Urgencies.heading(finding.urgency()) + ": " + title
                + (finding.isStanding() ? "" : "  [put right]")
                + (finding.dispute().isEmpty() ? "" : "  [disputed]"));
    }

    /** A finding that somebody answers for leaving as it is. */
    void waived(Assessment.Waived waived, String title) {
        talk.say(" - Waived: " + title);
        waived.finding().seen().forEach(seen -> talk.say("     Seen: " + seen));
        talk.say("     " + TextReport.waiver(waived.waiver()));
    }

    void panelHelp() {
        talk.say("Each part has its own answer. Type them in the order shown, with spaces: 1 2 1 1, or 2 3 in 1.");
        talk.say("   -: leaves a part open; it is asked again. A part that hangs on another takes no answer where it");
        talk.say("   does not apply. With commas or semicolons between, answers may be of several words.");
        talk.say("   2=1: answers part 2; 2=1; 3=open several");
        talk.say("   u2 why: cannot tell part 2; u in the line asks for the reason afterwards");
        talk.say("   n2 words: a note to part 2; p2 name: a picture; ?2: part 2 with how to look");
        talk.say("   b: back; s: leave what is open for later; l: put right or tested again");
        talk.say("   t: paste rows of a table; d: dispute a finding; f: findings so far");
        talk.say("   q: leave. Every answer is on disk; walk the same file to go on.");
    }

    void help() {
        talk.say("An answer: a choice by its number or its word, a quantity with its unit. Or:");
        talk.say("   b: back to the question before");
        talk.say("   s: skip; it comes again at the end");
        talk.say("   u: cannot tell, because ... (the reason tells the next person what to bring)");
        talk.say("   n: a note; p: the name of a picture; both go with the answer");
        talk.say("   l: something was put right or tested again; answer as it is left");
        talk.say("   t: paste rows of a table about several pieces of equipment; t FILE: out of a file");
        talk.say("   d: dispute a finding; f: findings so far");
        talk.say("   q: leave. Every answer is on disk; walk the same file to go on.");
    }
}
