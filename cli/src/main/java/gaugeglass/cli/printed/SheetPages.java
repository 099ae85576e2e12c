package gaugeglass.cli.printed;

import gaugeglass.checklists.AskWhen;
import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Status;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.report.TextReport;
import gaugeglass.cli.sheet.SingleAnswerStops;
import gaugeglass.cli.sheet.SingleAnswerStops.Stop;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns a checklist, and an inspection where there is one, into everything that stands on its printed page. */
final class SheetPages {
    /** As many pieces of each kind have room on a blank sheet. */
    private static final int ROOM = 2;

    private final Rulebook rulebook;
    private final Vocabulary vocabulary;
    private final SingleAnswerStops stops;
    private final Checklist checklist;

    SheetPages(Rulebook rulebook, SingleAnswerStops stops, Checklist checklist) {
        this.rulebook = rulebook;
        this.vocabulary = rulebook.vocabulary();
        this.stops = stops;
        this.checklist = checklist;
    }

    SheetView of(Optional<Inspection> inspection, PaperSize size, String css) {
        String site = inspection
                .map(one -> one.siteName().isEmpty() ? one.siteId() : one.siteName() + " (" + one.siteId() + ")")
                .orElse("");
        List<View.Named> head = new ArrayList<>();
        head.add(new View.Named("Site", site));
        head.add(new View.Named(
                "Day, begun at",
                inspection
                        .map(one -> one.date() + (one.started().isEmpty() ? "" : ", " + one.started()))
                        .orElse("")));
        head.add(new View.Named("By", inspection.map(Inspection::by).orElse("")));
        inspection
                .map(Inspection::note)
                .filter(note -> !note.isEmpty())
                .ifPresent(note -> head.add(new View.Named("Note", note)));
        List<SheetView.Unit> units = new ArrayList<>();
        for (Visited unit : inspection.map(Inspection::units).orElse(List.of())) {
            String anchor = "u" + (units.size() + 1);
            units.add(new OfUnit(anchor, unit.observations(), true)
                    .whole(unit.id() + (unit.name().isEmpty() ? "" : ", " + unit.name())));
        }
        if (units.isEmpty()) {
            Observations.Builder nothing = Observations.of(vocabulary, "");
            inspection.map(Inspection::site).orElse(List.of()).forEach(nothing::put);
            units.add(new OfUnit("u1", nothing.build(), inspection.isPresent()).whole(""));
        }
        String about =
                inspection.map(one -> ": " + site + ", visit of " + one.date()).orElse("");
        return new SheetView(
                checklist.title() + about,
                size,
                css,
                checklist.title(),
                head,
                checklist.title() + ReportPages.foot(about),
                units,
                stopTexts(),
                TextReport.DEFERS);
    }

    // ---- what a stop means

    private List<SheetView.Stop> stopTexts() {
        Map<Card, List<String>> answers = new LinkedHashMap<>();
        Map<String, Integer> numbers = numbers();
        for (Stop stop : stops.all()) {
            Integer number = numbers.get(place(stop.item(), stop.member()));
            if (number != null) {
                answers.computeIfAbsent(stop.card(), card -> new ArrayList<>())
                        .add("No. " + number + ": " + said(stop));
            }
        }
        List<SheetView.Stop> all = new ArrayList<>();
        Map<String, String> above = new HashMap<>();
        answers.forEach((card, list) -> {
            List<String> cautions = new ArrayList<>();
            for (String id : card.cautions()) {
                Caution caution = rulebook.book().cautions().get(id);
                String before = above.putIfAbsent(id, card.title());
                cautions.add(
                        before == null
                                ? caution.title() + ". " + caution.text()
                                : caution.title() + ": as under \"" + before + "\".");
            }
            all.add(new SheetView.Stop(card.title(), list, card.action(), cautions));
        });
        return all;
    }

    private String said(Stop stop) {
        return stop.isSpan() ? span(stop) : String.join(", ", stop.words()).replace('-', ' ');
    }

    /** The values of a stop, in words. */
    private String span(Stop stop) {
        Optional<Component> part =
                vocabulary.item(stop.item()).map(item -> item.values().get(0));
        String unit = part.filter(one -> one.form() == Component.Form.QUANTITY)
                .map(one -> " " + one.unit().symbol())
                .orElse("");
        if (stop.from().equals(stop.to())) {
            return stop.from() + unit;
        }
        boolean toTheEnd = stop.toIncluded()
                && part.filter(one ->
                                !Rational.of(new java.math.BigDecimal(one.to())).equals(stop.to()))
                        .isEmpty();
        boolean fromTheStart = stop.fromIncluded()
                && part.filter(one -> Rational.of(new java.math.BigDecimal(one.from()))
                                .equals(stop.from()))
                        .isPresent();
        if (toTheEnd) {
            return stop.fromIncluded() ? stop.from() + unit + " or more" : "above " + stop.from() + unit;
        }
        if (fromTheStart) {
            return stop.toIncluded() ? stop.to() + unit + " or less" : "below " + stop.to() + unit;
        }
        return (stop.fromIncluded() ? "from " : "above ")
                + stop.from()
                + (stop.toIncluded() ? " to " : " to below ")
                + stop.to()
                + unit;
    }

    // ---- numbers

    private static String place(String gives, String member) {
        return gives + " " + member;
    }

    /** The number of each question, by what it gives and for which member. */
    private Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new HashMap<>();
        int number = 0;
        for (Section section : checklist.sections()) {
            for (Question question : section.questions()) {
                numbers.put(place(question.gives(), section.member()), ++number);
            }
        }
        return numbers;
    }

    /** Which earlier answers let a question be asked; empty where it is always asked. */
    private String only(Question question, Section section, Map<String, Integer> numbers) {
        List<String> conditions = new ArrayList<>();
        for (AskWhen when : question.askWhen()) {
            Integer number = Optional.ofNullable(numbers.get(place(when.item(), section.member())))
                    .orElseGet(() -> numbers.get(place(when.item(), "")));
            List<String> words = new ArrayList<>();
            for (String word : when.words()) {
                words.add(
                        vocabulary.item(when.item()).isPresent()
                                ? word.replace('-', ' ')
                                : word.equals(AskWhen.SOME) ? "1 or more" : "0");
            }
            conditions.add((number == null ? "" : "no. " + number + " is ") + String.join(" or ", words));
        }
        return conditions.isEmpty() ? "" : "Only where " + String.join(", and ", conditions) + ".";
    }

    // ---- one unit

    static String heading(Stage stage) {
        return switch (stage) {
            case ARRIVAL -> "Arrival: look, and touch nothing yet";
            case COLD -> "Cold: fuel and power locked out";
            case FIRING -> "Firing: lit for tests, and never left";
            case HOT -> "Hot: steady steam";
            case LEAVING -> "Leaving";
        };
    }

    private final class OfUnit {
        private final String anchor;
        private final Observations observations;
        private final boolean isFilled;
        private final Map<String, Status> statuses = new HashMap<>();
        private final Map<String, Integer> cautionsAbove = new HashMap<>();
        private final Map<String, Integer> numbers = numbers();
        private int number;

        OfUnit(String anchor, Observations observations, boolean isFilled) {
            this.anchor = anchor;
            this.observations = observations;
            this.isFilled = isFilled;
            for (Step step : Interview.of(checklist, observations).steps()) {
                statuses.put(step.question().gives() + " " + Subjects.of(step.keys()), step.status());
            }
        }

        SheetView.Unit whole(String name) {
            Map<Stage, List<SheetView.Section>> stages = new EnumMap<>(Stage.class);
            for (Section section : checklist.sections()) {
                stages.computeIfAbsent(section.stage(), stage -> new ArrayList<>())
                        .add(section(section));
            }
            List<SheetView.Stage> all = new ArrayList<>();
            boolean isGateSet = false;
            for (Map.Entry<Stage, List<SheetView.Section>> entry : stages.entrySet()) {
                boolean isGate = !entry.getKey().isBeforeFiring() && !isGateSet;
                isGateSet |= isGate;
                all.add(new SheetView.Stage(
                        anchor + "-" + entry.getKey().word(),
                        heading(entry.getKey()),
                        isGate
                                ? List.of(
                                        "Here it stops: attended test firing",
                                        "Nothing is lit before everything above is answered, no answer marked STOP stands, and the"
                                                + " judgement of all answers together (gaugeglass assess) finds nothing against it."
                                                + " \"Not known\" is no leave to fire.")
                                : List.of(),
                        entry.getValue()));
            }
            all.add(new SheetView.Stage(
                    anchor + "-release",
                    "",
                    List.of(
                            "Before it is left to run by itself",
                            "It is released only when everything is answered and judged. Until then a named person stays with it, or"
                                    + " fuel is off and locked."),
                    List.of()));
            return new SheetView.Unit(name, all);
        }

        private SheetView.Section section(Section section) {
            List<List<Object>> things = things(section);
            List<SheetView.Question> questions = new ArrayList<>();
            for (Question question : section.questions()) {
                number++;
                List<View.Caution> cautions = new ArrayList<>();
                String above = "";
                Caution caution = rulebook.book().cautions().get(question.caution());
                if (caution != null) {
                    Integer before = cautionsAbove.putIfAbsent(caution.id(), number);
                    if (before == null) {
                        cautions.add(new View.Caution(caution.title(), caution.text()));
                    } else {
                        above = caution.title() + ", in full at no. " + before + ".";
                    }
                }
                List<SheetView.Row> rows = new ArrayList<>();
                for (List<Object> keys : things) {
                    rows.add(row(question, section, keys));
                }
                questions.add(new SheetView.Question(
                        number,
                        question.ask(),
                        question.look(),
                        only(question, section, numbers),
                        cautions,
                        above,
                        rows,
                        things.stream().anyMatch(keys -> isOpen(question, keys))));
            }
            return new SheetView.Section(section.title(), section.intro(), questions);
        }

        /** The things that a section asks about: those described, and room for those that are not yet. */
        private List<List<Object>> things(Section section) {
            if (section.each().isEmpty()) {
                return List.of(List.of());
            }
            Kind kind = vocabulary.kind(section.each()).orElseThrow();
            Kind counted = vocabulary.counted(kind);
            Roster roster = observations.roster(counted.id());
            List<String> tags = new ArrayList<>(roster.tags(State.AS_FOUND));
            OptionalInt fitted = roster.asFound();
            int room = fitted.isPresent() ? fitted.getAsInt() : Math.max(tags.size(), Math.min(ROOM, counted.most()));
            for (int i = tags.size() + 1; i <= room; i++) {
                tags.add("no. " + i);
            }
            return Interview.keys(vocabulary, section, tags);
        }

        private SheetView.Row row(Question question, Section section, List<Object> keys) {
            String label = keys.isEmpty() ? "" : String.valueOf(keys.get(0));
            if (status(question, keys) == Status.CLOSED && isFilled) {
                return new SheetView.Row(
                        label, List.of(), "", "", List.of("Not asked: an earlier answer rules it out."));
            }
            return question.isCount() ? counting(question) : answering(question, section, keys, label);
        }

        private Status status(Question question, List<Object> keys) {
            return statuses.getOrDefault(question.gives() + " " + Subjects.of(keys), Status.OPEN);
        }

        private boolean isOpen(Question question, List<Object> keys) {
            Status status = status(question, keys);
            return status != Status.ANSWERED && (status != Status.CLOSED || !isFilled);
        }

        private SheetView.Row counting(Question question) {
            Kind kind = vocabulary.kind(question.kind()).orElseThrow();
            Roster roster = observations.roster(kind.id());
            List<SheetView.Part> parts = new ArrayList<>();
            parts.add(new SheetView.Part(
                    "",
                    List.of(),
                    "a whole number, 0 to " + kind.most(),
                    stopSpans(question.gives(), ""),
                    roster.asFound().isPresent()
                            ? String.valueOf(roster.asFound().getAsInt())
                            : ""));
            parts.add(new SheetView.Part("Tags", List.of(), "", "", String.join(", ", roster.tags(State.AS_FOUND))));
            String left =
                    roster.asLeft().isPresent() ? String.valueOf(roster.asLeft().getAsInt()) : "";
            return new SheetView.Row("", parts, roster.unread(), left, List.of());
        }

        private SheetView.Row answering(Question question, Section section, List<Object> keys, String label) {
            ItemType item = question.item().orElseThrow();
            Optional<Answer> answer = observations.answer(item, keys, State.AS_FOUND);
            Optional<Answer> left = observations.answer(item, keys, State.AS_LEFT);
            List<Object> values =
                    answer.flatMap(Answer::fact).map(item::valuesOf).orElse(List.of());
            List<SheetView.Part> parts = new ArrayList<>();
            for (int i = 0; i < item.values().size(); i++) {
                parts.add(part(
                        question,
                        item,
                        i,
                        section.member(),
                        i < values.size() ? Optional.of(values.get(i)) : Optional.empty()));
            }
            List<String> notes = new ArrayList<>();
            answer.map(Answer::note).filter(note -> !note.isEmpty()).ifPresent(note -> notes.add("Note: " + note));
            answer.map(Answer::photos)
                    .filter(photos -> !photos.isEmpty())
                    .ifPresent(photos -> notes.add("Photos: " + String.join(", ", photos)));
            return new SheetView.Row(
                    label,
                    parts,
                    answer.map(Answer::unread).orElse(""),
                    left.map(Naming::answered).orElse(""),
                    notes);
        }

        private SheetView.Part part(
                Question question, ItemType item, int index, String member, Optional<Object> value) {
            Component part = item.values().get(index);
            String name =
                    item.values().size() == 1 ? "" : Words.hyphened(part.name()).replace('-', ' ');
            if (part.form() != Component.Form.CHOICE) {
                return new SheetView.Part(
                        name,
                        List.of(),
                        hint(part),
                        index == 0 && item.values().size() == 1 ? stopSpans(item.id(), member) : "",
                        value.map(String::valueOf).orElse(""));
            }
            List<SheetView.Choice> choices = new ArrayList<>();
            for (String word : part.choices()) {
                choices.add(new SheetView.Choice(
                        word.replace('-', ' '),
                        question.choices().getOrDefault(word, ""),
                        value.isPresent() && Words.of((Enum<?>) value.get()).equals(word),
                        stops.of(item.id(), member).stream()
                                .anyMatch(stop -> stop.words().equals(List.of(word)))));
            }
            boolean isLast = index == item.values().size() - 1;
            return new SheetView.Part(name, choices, "", isLast && index > 0 ? together(item.id(), member) : "", "");
        }

        private String stopSpans(String item, String member) {
            List<String> spans = new ArrayList<>();
            for (Stop stop : stops.of(item, member)) {
                String said = span(stop);
                if (stop.isSpan() && !spans.contains(said)) {
                    spans.add(said);
                }
            }
            return String.join("; ", spans);
        }

        /** The stops of a question that is answered by several words at once. */
        private String together(String item, String member) {
            return String.join(
                    "; ",
                    stops.of(item, member).stream()
                            .map(SheetPages.this::said)
                            .distinct()
                            .toList());
        }
    }

    private static String hint(Component part) {
        return switch (part.form()) {
            case QUANTITY -> part.unit().symbol() + " (" + part.from() + " to " + part.to() + ")";
            case COUNT -> "a whole number, " + part.from() + " to " + part.to();
            case DATE -> "year, month, day";
            default -> "";
        };
    }
}
