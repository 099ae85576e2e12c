package gaugeglass.cli.walk;

import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.List;
import java.util.Optional;

/** What a question and a finding look like. */
final class AskScreen {
    private static final int BAR = 20;

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
        talk.say("");
    }

    void question(Question question, Optional<Caution> caution) {
        caution.ifPresent(one -> talk.say("! " + one.title() + ". " + one.text()));
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
                talk.say("   With its unit, say in " + part.unit().symbol() + " (" + part.from() + " to " + part.to()
                        + ").");
            case COUNT -> talk.say("   A whole number, " + part.from() + " to " + part.to() + ".");
            case DATE -> talk.say("   A date as 2015-08-31; month or year alone will do: 2015-08, 2015.");
            case TEXT -> talk.say("   In words. (Orders begin with a full stop here: .s .b .u .q)");
        }
    }

    void finding(Finding finding, String title) {
        boolean stop = finding.urgency() == Urgency.STOP;
        talk.say("");
        talk.say(stop ? "*** DO NOT FIRE ***  " + title : "* " + heading(finding.urgency()) + ": " + title);
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
        talk.say(" - " + heading(finding.urgency()) + ": " + title + (finding.isStanding() ? "" : "  [put right]")
                + (finding.dispute().isEmpty() ? "" : "  [disputed]"));
    }

    static String heading(Urgency urgency) {
        return switch (urgency) {
            case STOP -> "Do not fire";
            case NOW -> "Put right before leaving";
            case SEASON -> "This heating season";
            case PLAN -> "Plan and budget";
            case WATCH -> "Watch and record";
        };
    }

    void help() {
        talk.say("b back   s skip   u cannot tell, because ...   n note   p photo name");
        talk.say("l something was put right: answer again   d dispute a finding");
        talk.say("f findings so far   q leave (everything is on disk; go on later)");
        talk.say("A choice is typed by its number or its word; a quantity with its unit.");
    }
}
