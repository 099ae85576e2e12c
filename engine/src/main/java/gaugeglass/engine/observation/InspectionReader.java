package gaugeglass.engine.observation;

import gaugeglass.engine.observation.Inspection.Decided;
import gaugeglass.engine.observation.Inspection.Remark;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.Layout.Equipment;
import gaugeglass.engine.observation.Layout.FixedSet;
import gaugeglass.engine.observation.Layout.Part;
import gaugeglass.engine.observation.Layout.Question;
import gaugeglass.engine.observation.Roster.Presence;
import gaugeglass.engine.observation.Values.Unfit;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Plain;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads inspection files of format 1, strictly: whatever it does not know is a mistake with its place, and all
 * independent mistakes are named at once. One reader serves any number of files and threads.
 */
public final class InspectionReader {
    private static final String FORMAT = "format";
    private static final String VISIT = "visit";
    private static final String EARLIER = "earlier";
    private static final String DECISIONS = "decisions";
    private static final String UNREAD = "unread";
    private static final String FITTED = "fitted";
    private static final String EACH = "each";

    /** Longer ids and tags would not fit a report. */
    private static final int LONGEST_NAME = 60;

    static final List<String> URGENCIES = List.of("stop", "now", "season", "plan", "watch");

    private final Layout layout;

    /**
     * A reader for one vocabulary.
     *
     * @throws IllegalArgumentException when two of its questions would stand under one key of a file
     */
    public InspectionReader(Vocabulary vocabulary) {
        this.layout = new Layout(vocabulary);
    }

    /** Reads one text; for many texts make one reader and keep it. */
    public static Inspection read(Vocabulary vocabulary, String file, String text) {
        return new InspectionReader(vocabulary).read(file, text);
    }

    /**
     * Reads one inspection.
     *
     * @param file the name to use in messages
     * @param text YAML or JSON
     * @throws Mistakes when anything in it is not understood, or the visit has no date
     */
    public Inspection read(String file, String text) {
        return new Run(file, Optional.empty()).whole(text);
    }

    /**
     * Reads one inspection whose visit may lack its date.
     *
     * @param otherwise the day of the visit where the text names none
     * @throws Mistakes when anything in it is not understood
     */
    public Inspection read(String file, String text, LocalDate otherwise) {
        return new Run(file, Optional.of(otherwise)).whole(text);
    }

    /**
     * Reads one inspection that was taken apart already, so that its places are those of the file it came from.
     *
     * @param file the name to use in messages
     * @throws Mistakes when anything in it is not understood, or the visit has no date
     */
    public Inspection read(String file, Node root) {
        return new Run(file, Optional.empty()).whole(root);
    }

    /** A step of the way from the top of the file; only a message makes a path of it. */
    private record Place(Optional<Place> above, String name) {
        static Place top(String name) {
            return new Place(Optional.empty(), name);
        }

        Place to(String key) {
            return new Place(Optional.of(this), key);
        }

        String path() {
            return above.filter(place -> !place.name.isEmpty())
                            .map(place -> place.path() + "/")
                            .orElse("")
                    + name;
        }
    }

    private static final Place TOP = Place.top("");

    /** What the answers of one place have in common. */
    private record Context(List<Object> keys, State state, String at) {}

    /** The reading of one file. */
    private final class Run {
        private final String file;
        private final Optional<LocalDate> otherwise;
        private final List<Mistake> mistakes = new ArrayList<>();
        private final List<Remark> remarks = new ArrayList<>();
        private Optional<LocalDate> date = Optional.empty();

        /** The keys that a misspelt one most likely stands for; that they are missing is no second mistake. */
        private final Set<String> meant = new HashSet<>();

        private Run(String file, Optional<LocalDate> otherwise) {
            this.file = file;
            this.otherwise = otherwise;
        }

        private Inspection whole(String text) {
            if (InspectionWriter.isCutOff(text)) {
                // Whatever else is wrong comes of this, and what is missing may be a unit that nobody would miss.
                throw new Mistakes(List.of(new Mistake(
                        file,
                        (int) text.lines().count(),
                        0,
                        "",
                        "the end of this file is missing; a walk wrote it, and does not end it so",
                        "the line that a walk writes last. Walk the file to go on from what is left or from the state"
                                + " before; to use it as it is, take out its first line",
                        "")));
            }
            return whole(NodeReader.read(file, text, mistakes));
        }

        private Inspection whole(Node root) {
            if (!(root instanceof Node.Fields all)) {
                throw new Mistakes(List.of(new Mistake(
                        file,
                        root.line(),
                        root.column(),
                        "",
                        "found " + root.shape(),
                        "an inspection: the keys format, site, visit, " + layout.unit.plural(),
                        "")));
            }
            String siteKey = layout.vocabulary.site().id();
            close(all, TOP, List.of(FORMAT, siteKey, VISIT, EARLIER, DECISIONS, JudgedBy.KEY, layout.unit.plural()));
            format(all);

            Node.Fields visit = group(all, VISIT, TOP);
            Place inVisit = Place.top(VISIT);
            close(visit, inVisit, List.of("date", "by", "started", "note"));
            visitDate(all, visit, inVisit);
            String by = text(visit, "by", inVisit);
            String started = time(visit, "started", inVisit);
            String note = text(visit, "note", inVisit);

            Node.Fields site = group(all, siteKey, TOP);
            Place inSite = Place.top(siteKey);
            close(site, inSite, layout.siteKeys);
            String siteId = "";
            if (isBlank(site, "id") && meant.contains(siteKey)) {
                siteId = "";
            } else if (isBlank(site, "id")) {
                missing(site, inSite, "id", "the site has no id", "id: a short name that stays the same over years");
            } else {
                siteId = name(site, "id", inSite);
            }
            String siteName = text(site, "name", inSite);
            List<Answer> siteAnswers = new ArrayList<>();
            answers(layout.site, site, inSite, new Context(List.of(), State.AS_FOUND, ""), siteAnswers::add);
            siteAsLeft(site, inSite, siteAnswers::add);

            List<Earlier> earlier = earlier(all);
            List<Visited> units = units(all, siteAnswers, earlier);
            List<Decided> decisions = decisions(all, units);
            JudgedBy judgedBy = judgedBy(all);
            if (!mistakes.isEmpty()) {
                throw sorted();
            }
            return new Inspection(
                    file,
                    Inspection.FORMAT,
                    siteId,
                    siteName,
                    siteAnswers,
                    date.orElseThrow(),
                    by,
                    started,
                    note,
                    units,
                    earlier,
                    decisions,
                    judgedBy,
                    remarks);
        }

        /** Ends the reading at once where the form is not the one known: every other key may mean another thing. */
        private void format(Node.Fields all) {
            String expected = FORMAT + ": " + Inspection.FORMAT;
            if (isBlank(all, FORMAT)) {
                missing(all, TOP, FORMAT, "\"format\" is missing", expected + " at the top");
                return;
            }
            Node node = all.get(FORMAT).orElseThrow();
            Optional<String> text = scalar(node, Place.top(FORMAT), expected);
            if (text.isEmpty() || text.get().equals(String.valueOf(Inspection.FORMAT))) {
                return;
            }
            Optional<Integer> number = fit(node, Place.top(FORMAT), () -> Values.whole(text.get(), "now 1"));
            if (number.isPresent()) {
                mistakes.clear();
                wrong(
                        node,
                        Place.top(FORMAT),
                        "this is format " + number.get() + "; this program reads format " + Inspection.FORMAT
                                + (number.get() > Inspection.FORMAT ? ", so a newer one is needed" : ""),
                        expected,
                        "");
                throw new Mistakes(mistakes);
            }
        }

        private void siteAsLeft(Node.Fields site, Place place, Consumer<Answer> sink) {
            Optional<Node> left = site.get(Layout.AS_LEFT);
            if (left.isEmpty() || isBlank(left.get())) {
                return;
            }
            Place inside = place.to(Layout.AS_LEFT);
            fields(left.get(), inside, "a group of keys as above").ifPresent(answers -> {
                close(answers, inside, layout.siteLeftKeys);
                String at = time(answers, "at", inside);
                answers(layout.site, answers, inside, new Context(List.of(), State.AS_LEFT, at), sink);
            });
        }

        private void visitDate(Node.Fields all, Node.Fields visit, Place place) {
            if (isBlank(visit, "date")) {
                date = otherwise;
                if (date.isEmpty() && !meant.contains(VISIT)) {
                    missing(
                            all.get(VISIT).isPresent() ? visit : all,
                            place,
                            "date",
                            "the visit has no date",
                            "date: year, month and day such as 2026-09-14");
                }
                return;
            }
            date = day(visit, "date", place);
        }

        // ---- units

        private List<Visited> units(Node.Fields all, List<Answer> siteAnswers, List<Earlier> earlier) {
            String plural = layout.unit.plural();
            List<Visited> units = new ArrayList<>();
            Map<String, Integer> lines = new HashMap<>();
            Place place = Place.top(plural);
            // A key with nothing after it says nothing; an empty list says that nothing was left.
            boolean isKnown = !isBlank(all, EARLIER);
            for (Node node : list(all, plural, place)) {
                int number = units.size() + 1;
                Place inUnit = place.to(String.valueOf(number));
                Optional<Node.Fields> fields = fields(node, inUnit, "a group that begins with id:");
                if (fields.isEmpty()) {
                    continue;
                }
                close(fields.get(), inUnit, layout.unitKeys);
                String id = "";
                if (isBlank(fields.get(), "id")) {
                    missing(
                            fields.get(),
                            inUnit,
                            "id",
                            "this " + layout.unit.label() + " has no id",
                            "id: a short name that stays the same over years");
                } else {
                    id = name(fields.get(), "id", inUnit);
                    if (!id.isEmpty()) {
                        inUnit = place.to(id);
                        once(fields.get(), "id", id, lines, inUnit, "id");
                    }
                }
                Observations.Builder builder = Observations.of(layout.vocabulary, id);
                if (isKnown) {
                    String own = id;
                    builder.earlier(earlier.stream()
                            .filter(one -> one.unit().equals(own))
                            .toList());
                }
                units.add(unit(fields.get(), builder, siteAnswers, inUnit));
            }
            return units;
        }

        private Visited unit(Node.Fields fields, Observations.Builder builder, List<Answer> siteAnswers, Place place) {
            siteAnswers.forEach(builder::put);
            groups(fields, place, new Context(List.of(), State.AS_FOUND, ""), builder);

            Map<String, Integer> leftCounts = new HashMap<>();
            Optional<Node> left = fields.get(Layout.AS_LEFT);
            if (left.isPresent() && !isBlank(left.get())) {
                asLeft(left.get(), place.to(Layout.AS_LEFT), builder, leftCounts);
            }
            for (Map.Entry<String, Equipment> entry : layout.equipment.entrySet()) {
                Optional<Node> node = fields.get(entry.getKey());
                equipment(
                        node,
                        entry.getValue(),
                        place.to(entry.getKey()),
                        builder,
                        Optional.ofNullable(leftCounts.get(entry.getKey())));
            }
            disputes(fields, place, builder);
            return new Visited(text(fields, "name", place), text(fields, "checklist", place), builder.build());
        }

        private void groups(Node.Fields fields, Place place, Context context, Observations.Builder builder) {
            layout.groups.forEach((group, questions) -> {
                Optional<Node> node = fields.get(group);
                if (node.isEmpty() || isBlank(node.get())) {
                    return;
                }
                Place inGroup = place.to(group);
                Optional<Node.Fields> answers = fields(
                        node.get(), inGroup, "a group with keys out of " + String.join(", ", questions.keySet()));
                if (answers.isPresent()) {
                    close(answers.get(), inGroup, questions.keySet());
                    answers(questions, answers.get(), inGroup, context, builder::put);
                }
            });
        }

        private void asLeft(Node node, Place place, Observations.Builder builder, Map<String, Integer> leftCounts) {
            Optional<Node.Fields> fields = fields(node, place, "a group of keys as above");
            if (fields.isEmpty()) {
                return;
            }
            close(fields.get(), place, layout.leftKeys);
            String at = time(fields.get(), "at", place);
            groups(fields.get(), place, new Context(List.of(), State.AS_LEFT, at), builder);
            layout.equipment.forEach((plural, equipment) -> {
                Optional<Node> counted = fields.get().get(plural);
                if (counted.isEmpty() || isBlank(counted.get())) {
                    return;
                }
                Place inside = place.to(plural);
                Optional<Node.Fields> count = fields(counted.get(), inside, "a group with the key fitted");
                if (count.isPresent()) {
                    close(count.get(), inside, List.of(FITTED));
                    count.get()
                            .get(FITTED)
                            .flatMap(number -> number(number, equipment.kind, inside.to(FITTED)))
                            .ifPresent(number -> {
                                leftCounts.put(plural, number);
                                builder.fitted(equipment.kind.id(), State.AS_LEFT, number);
                            });
                }
            });
        }

        // ---- equipment that is counted

        private void equipment(
                Optional<Node> node,
                Equipment equipment,
                Place place,
                Observations.Builder builder,
                Optional<Integer> leftCount) {
            if (node.isEmpty() || isBlank(node.get())) {
                return;
            }
            Optional<Node.Fields> fields = fields(node.get(), place, "a group with the keys fitted and each");
            if (fields.isEmpty()) {
                return;
            }
            close(fields.get(), place, List.of(FITTED, EACH));
            Optional<Integer> count = fitted(fields.get(), equipment.kind, place, builder);
            int found = 0;
            int left = 0;
            Map<String, Integer> lines = new HashMap<>();
            int number = 0;
            for (Node one : list(fields.get(), EACH, place.to(EACH))) {
                number++;
                Place inside = place.to(EACH).to(String.valueOf(number));
                Optional<Node.Fields> answers = fields(one, inside, "a group that begins with tag:");
                if (answers.isEmpty()) {
                    continue;
                }
                Optional<Presence> presence = one(answers.get(), equipment, place, inside, lines, builder);
                if (presence.isPresent()) {
                    found += presence.get() == Presence.AS_LEFT ? 0 : 1;
                    left += presence.get() == Presence.AS_FOUND ? 0 : 1;
                }
            }
            tooMany(fields.get(), place, equipment.kind, count, found, "");
            tooMany(fields.get(), place, equipment.kind, leftCount, left, " as left");
        }

        private void tooMany(
                Node.Fields fields, Place place, Kind kind, Optional<Integer> count, int described, String when) {
            if (count.isPresent() && described > count.get()) {
                wrong(
                        fields.get(EACH).orElse(fields),
                        place.to(EACH),
                        described + " are described" + when + ", but " + count.get() + " fitted",
                        "at most as many described as fitted",
                        "");
            }
        }

        private Optional<Integer> fitted(Node.Fields fields, Kind kind, Place place, Observations.Builder builder) {
            Optional<Node> node = fields.get(FITTED);
            if (node.isEmpty() || isBlank(node.get())) {
                return Optional.empty();
            }
            Place at = place.to(FITTED);
            if (node.get() instanceof Node.Fields group) {
                close(group, at, List.of(UNREAD));
                String reason = text(group, UNREAD, at);
                if (!reason.isEmpty()) {
                    builder.uncounted(kind.id(), reason);
                } else if (isBlank(group, UNREAD)
                        && group.all().size() > 0
                        && group.get(UNREAD).isEmpty()) {
                    wrong(group, at, "found a group of keys", "how many, or the group \"unread: why\"", "");
                }
                return Optional.empty();
            }
            Optional<Integer> number = number(node.get(), kind, at);
            number.ifPresent(n -> builder.fitted(kind.id(), State.AS_FOUND, n));
            return number;
        }

        private Optional<Integer> number(Node node, Kind kind, Place place) {
            if (isBlank(node)) {
                return Optional.empty();
            }
            String span = "0 to " + kind.most();
            Optional<String> text = scalar(node, place, "a whole number, " + span);
            return text.flatMap(written -> fit(node, place, () -> {
                int number = Values.whole(written, span);
                if (number < 0 || number > kind.most()) {
                    throw new Unfit("\"" + written + "\" is outside what is believed", span, "");
                }
                return number;
            }));
        }

        /** Reads one piece of equipment; tells when it is there, unless the entry is an empty form. */
        private Optional<Presence> one(
                Node.Fields fields,
                Equipment equipment,
                Place kindPlace,
                Place place,
                Map<String, Integer> lines,
                Observations.Builder builder) {
            Kind kind = equipment.kind;
            close(fields, place, equipment.keys);
            String tag = "";
            boolean isDoubled = false;
            Place inside = place;
            if (isBlank(fields, "tag")) {
                if (isEmptyForm(fields)) {
                    return Optional.empty();
                }
                missing(
                        fields,
                        place,
                        "tag",
                        "this " + kind.label() + " has no tag",
                        "tag: a name that stays the same over years");
            } else {
                tag = name(fields, "tag", place);
                if (!tag.isEmpty()) {
                    inside = kindPlace.to(tag);
                    isDoubled = !once(fields, "tag", tag, lines, inside, "tag");
                    tag = isDoubled ? "" : tag;
                }
            }
            Presence presence = word(fields, "present", Presence.class, Presence.THROUGHOUT, inside);
            // Where the tag is wrong the rest is still read, for its own mistakes, into nothing.
            Observations.Builder target = tag.isEmpty() ? Observations.of(layout.vocabulary, "") : builder;
            target.tag(kind.id(), tag, presence);
            State direct = presence == Presence.AS_LEFT ? State.AS_LEFT : State.AS_FOUND;
            described(fields, equipment, tag, inside, direct, "", target);
            Optional<Node> left = fields.get(Layout.AS_LEFT);
            if (left.isPresent() && !isBlank(left.get())) {
                Place inLeft = inside.to(Layout.AS_LEFT);
                Optional<Node.Fields> answers = fields(left.get(), inLeft, "a group of keys as above");
                if (answers.isPresent() && presence == Presence.AS_FOUND) {
                    wrong(
                            left.get(),
                            inLeft,
                            "this one was taken out, so nothing of it is as left",
                            "present: throughout",
                            "");
                } else if (answers.isPresent()) {
                    close(answers.get(), inLeft, equipment.leftKeys);
                    String at = time(answers.get(), "at", inLeft);
                    described(answers.get(), equipment, tag, inLeft, State.AS_LEFT, at, target);
                }
            }
            return isDoubled ? Optional.empty() : Optional.of(presence);
        }

        private void described(
                Node.Fields fields,
                Equipment equipment,
                String tag,
                Place place,
                State state,
                String at,
                Observations.Builder builder) {
            answers(
                    equipment.questions,
                    fields,
                    place,
                    new Context(List.of(tag), state, at),
                    answer -> put(builder, answer, fields, place));
            equipment.sets.forEach((plural, set) -> {
                Optional<Node> node = fields.get(plural);
                if (node.isEmpty() || isBlank(node.get())) {
                    return;
                }
                Place inSet = place.to(plural);
                Optional<Node.Fields> members = fields(
                        node.get(), inSet, "a group with keys out of " + String.join(", ", set.members.keySet()));
                if (members.isEmpty()) {
                    return;
                }
                close(members.get(), inSet, set.members.keySet());
                set.members.forEach((word, member) -> members.get()
                        .get(word)
                        .ifPresent(node2 -> member(node2, set, tag, member, inSet.to(word), state, at, builder)));
            });
        }

        private void member(
                Node node,
                FixedSet set,
                String tag,
                Object member,
                Place place,
                State state,
                String at,
                Observations.Builder builder) {
            if (isBlank(node)) {
                return;
            }
            Optional<Node.Fields> fields =
                    fields(node, place, "a group with keys out of " + String.join(", ", set.questions.keySet()));
            if (fields.isEmpty()) {
                return;
            }
            close(fields.get(), place, set.keys);
            String own = time(fields.get(), "at", place);
            answers(
                    set.questions,
                    fields.get(),
                    place,
                    new Context(List.of(tag, member), state, own.isEmpty() ? at : own),
                    answer -> put(builder, answer, fields.get(), place));
        }

        private void put(Observations.Builder builder, Answer answer, Node.Fields fields, Place place) {
            if (builder.has(answer.item(), answer.keys(), answer.state())) {
                wrong(
                        fields.get(answer.item().name()).orElse(fields),
                        place.to(answer.item().name()),
                        "two answers to one question",
                        "one of the two: of what was put in on the visit everything is as left",
                        "");
                return;
            }
            builder.put(answer);
        }

        /** Whether nothing but keys without values stands in a group. */
        private boolean isEmptyForm(Node node) {
            if (node instanceof Node.Fields fields) {
                for (Node.Field field : fields.all().values()) {
                    if (!isEmptyForm(field.value())) {
                        return false;
                    }
                }
                return true;
            }
            return node instanceof Node.Items items ? items.all().isEmpty() : isBlank(node);
        }

        // ---- answers

        private void answers(
                Map<String, Question> questions,
                Node.Fields fields,
                Place place,
                Context context,
                Consumer<Answer> sink) {
            for (Map.Entry<String, Node.Field> entry : fields.all().entrySet()) {
                Question question = questions.get(entry.getKey());
                if (question != null) {
                    answer(question, entry.getValue().value(), place.to(entry.getKey()), context)
                            .ifPresent(sink);
                }
            }
        }

        private Optional<Answer> answer(Question question, Node node, Place place, Context context) {
            if (isBlank(node)) {
                return Optional.empty();
            }
            if (question.parts.size() > 1) {
                return ofParts(question, node, place, context);
            }
            Part part = question.parts.get(0);
            if (node instanceof Node.Scalar scalar) {
                return value(part, scalar, place)
                        .map(value ->
                                made(question, List.of(value), scalar.text().strip(), "", List.of(), "", context));
            }
            Optional<Node.Fields> fields = fields(node, place, "one value, or a group with the key value or unread");
            if (fields.isEmpty()) {
                return Optional.empty();
            }
            close(fields.get(), place, question.keys);
            boolean hasValue = !isBlank(fields.get(), "value");
            Extras extras = extras(fields.get(), place);
            if (!extras.unread.isEmpty()) {
                if (hasValue) {
                    wrong(node, place, "both a value and why it could not be read", "one of the two", "");
                }
                return Optional.of(unread(question, extras, context));
            }
            if (!hasValue) {
                if (!isEmptyForm(node) && isBlank(fields.get(), UNREAD)) {
                    wrong(node, place, "there is no answer in this group", "value: or unread: beside the rest", "");
                }
                return Optional.empty();
            }
            Node value = fields.get().get("value").orElseThrow();
            if (!(value instanceof Node.Scalar scalar)) {
                wrong(value, place.to("value"), "found " + value.shape(), "one value", "");
                return Optional.empty();
            }
            return value(part, scalar, place.to("value"))
                    .map(read -> made(
                            question,
                            List.of(read),
                            scalar.text().strip(),
                            extras.note,
                            extras.photos,
                            extras.at,
                            context));
        }

        private Optional<Answer> ofParts(Question question, Node node, Place place, Context context) {
            String wanted = question.wanted;
            Optional<Node.Fields> fields = fields(node, place, wanted);
            if (fields.isEmpty()) {
                return Optional.empty();
            }
            close(fields.get(), place, question.keys);
            Extras extras = extras(fields.get(), place);
            List<Object> values = new ArrayList<>();
            List<String> typed = new ArrayList<>();
            List<String> lacking = new ArrayList<>();
            boolean fits = true;
            for (Part part : question.parts) {
                Optional<Node> written = fields.get().get(part.key);
                if (written.isEmpty() || isBlank(written.get())) {
                    lacking.add(part.key);
                } else if (written.get() instanceof Node.Scalar scalar) {
                    Optional<Object> value = value(part, scalar, place.to(part.key));
                    value.ifPresent(values::add);
                    typed.add(scalar.text().strip());
                    fits &= value.isPresent();
                } else {
                    wrong(
                            written.get(),
                            place.to(part.key),
                            "found " + written.get().shape(),
                            "one value",
                            "");
                    fits = false;
                }
            }
            boolean none = lacking.size() == question.parts.size();
            if (!extras.unread.isEmpty()) {
                if (!none) {
                    wrong(node, place, "both an answer and why it could not be read", "one of the two", "");
                }
                return Optional.of(unread(question, extras, context));
            }
            if (none && fits) {
                if (!isEmptyForm(node) && isBlank(fields.get(), UNREAD)) {
                    wrong(node, place, "there is no answer in this group", wanted + ", or unread: why", "");
                }
                return Optional.empty();
            }
            if (!lacking.isEmpty()) {
                wrong(
                        node,
                        place,
                        String.join(" and ", lacking) + (lacking.size() == 1 ? " is" : " are") + " missing",
                        "all parts of the answer, or unread: why where one cannot be told",
                        "");
                return Optional.empty();
            }
            return fits
                    ? Optional.of(made(
                            question,
                            values,
                            String.join(InspectionWriter.BETWEEN_PARTS, typed),
                            extras.note,
                            extras.photos,
                            extras.at,
                            context))
                    : Optional.empty();
        }

        private Answer made(
                Question question,
                List<Object> values,
                String typed,
                String note,
                List<String> photos,
                String at,
                Context context) {
            return new Answer(
                    question.item,
                    context.keys(),
                    context.state(),
                    Optional.of(question.item.make(context.keys(), values)),
                    "",
                    note,
                    photos,
                    at.isEmpty() ? context.at() : at,
                    typed);
        }

        private Answer unread(Question question, Extras extras, Context context) {
            return new Answer(
                    question.item,
                    context.keys(),
                    context.state(),
                    Optional.empty(),
                    extras.unread,
                    extras.note,
                    extras.photos,
                    extras.at.isEmpty() ? context.at() : extras.at,
                    "");
        }

        private Optional<Object> value(Part part, Node.Scalar scalar, Place place) {
            String text = scalar.text().strip();
            if (text.isEmpty()) {
                wrong(
                        scalar,
                        place,
                        "an empty text is no answer",
                        "an answer, or nothing at all where nobody looked",
                        "");
                return Optional.empty();
            }
            return fit(scalar, place, () -> {
                Values.Read read = Values.read(part, text, date);
                if (!read.remark().isEmpty()) {
                    remarks.add(new Remark(scalar.line(), place.path(), read.remark()));
                }
                return read.value();
            });
        }

        private record Extras(String unread, String note, List<String> photos, String at) {}

        private Extras extras(Node.Fields fields, Place place) {
            return new Extras(
                    text(fields, UNREAD, place),
                    text(fields, "note", place),
                    texts(fields, "photos", place),
                    time(fields, "at", place));
        }

        // ---- what was found before, and what is disputed

        private List<Earlier> earlier(Node.Fields all) {
            List<Earlier> earlier = new ArrayList<>();
            Place place = Place.top(EARLIER);
            List<String> keys = List.of(
                    "rule", layout.unit.id(), "subject", "urgency", "found-on", "decision", "decided-by", "decided-on");
            for (Node node : list(all, EARLIER, place)) {
                Place inside = place.to(String.valueOf(earlier.size() + 1));
                Optional<Node.Fields> fields = fields(node, inside, "a group with the keys " + String.join(", ", keys));
                if (fields.isEmpty()) {
                    continue;
                }
                Node.Fields found = fields.get();
                close(found, inside, keys);
                String rule = required(found, "rule", inside);
                String unit = required(found, layout.unit.id(), inside);
                String urgency = required(found, "urgency", inside);
                if (!urgency.isEmpty() && !URGENCIES.contains(urgency)) {
                    wrong(
                            found.get("urgency").orElseThrow(),
                            inside.to("urgency"),
                            "\"" + Node.shortened(urgency) + "\" is no urgency",
                            "one of " + String.join(", ", URGENCIES),
                            Nearest.to(urgency, URGENCIES).orElse(""));
                }
                required(found, "found-on", inside);
                Optional<LocalDate> foundOn =
                        isBlank(found, "found-on") ? Optional.empty() : day(found, "found-on", inside);
                Decision decision = word(found, "decision", Decision.class, Decision.NONE, inside);
                String decidedOn = isBlank(found, "decided-on")
                        ? ""
                        : day(found, "decided-on", inside)
                                .map(LocalDate::toString)
                                .orElse("");
                earlier.add(new Earlier(
                        rule,
                        unit,
                        text(found, "subject", inside),
                        urgency,
                        foundOn.orElse(LocalDate.EPOCH),
                        decision,
                        text(found, "decided-by", inside),
                        decidedOn));
            }
            return earlier;
        }

        private JudgedBy judgedBy(Node.Fields all) {
            return isBlank(all, JudgedBy.KEY)
                    ? JudgedBy.NOT_RECORDED
                    : JudgedBy.of(
                            Form.of(file, JudgedBy.KEY, all.get(JudgedBy.KEY).orElseThrow(), mistakes));
        }

        private List<Decided> decisions(Node.Fields all, List<Visited> units) {
            List<Decided> decisions = new ArrayList<>();
            List<String> ids = units.stream().map(Visited::id).toList();
            Map<String, Integer> lines = new HashMap<>();
            Place place = Place.top(DECISIONS);
            List<String> keys =
                    List.of("rule", layout.unit.id(), "subject", "decision", "decided-by", "decided-on", "note");
            int number = 0;
            for (Node node : list(all, DECISIONS, place)) {
                Place inside = place.to(String.valueOf(++number));
                Optional<Node.Fields> fields = fields(node, inside, "a group with the keys " + String.join(", ", keys));
                if (fields.isEmpty()) {
                    continue;
                }
                Node.Fields one = fields.get();
                close(one, inside, keys);
                String rule = required(one, "rule", inside);
                String unit = required(one, layout.unit.id(), inside);
                if (!unit.isEmpty() && !ids.contains(unit)) {
                    wrong(
                            one.get(layout.unit.id()).orElseThrow(),
                            inside.to(layout.unit.id()),
                            "no " + layout.unit.label() + " of this file has the id \"" + Node.shortened(unit) + "\"",
                            ids.isEmpty() ? "none" : "one of " + String.join(", ", ids),
                            Nearest.to(unit, ids).orElse(""));
                }
                String subject = text(one, "subject", inside);
                required(one, "decision", inside);
                Decision decision = word(one, "decision", Decision.class, Decision.NONE, inside);
                if (decision == Decision.NONE && !isBlank(one, "decision") && isWordNone(one)) {
                    wrong(
                            one.get("decision").orElseThrow(),
                            inside.to("decision"),
                            "\"none\" is no decision",
                            "done, deferred or refused; or nothing at all, where nobody decided",
                            "");
                }
                String by = required(one, "decided-by", inside);
                required(one, "decided-on", inside);
                Optional<LocalDate> on = isBlank(one, "decided-on") ? Optional.empty() : day(one, "decided-on", inside);
                Integer before = lines.putIfAbsent(rule + "\n" + unit + "\n" + subject, one.line());
                if (before != null && !rule.isEmpty()) {
                    wrong(
                            one,
                            inside,
                            "there is a decision about this finding already, in line " + before,
                            "the one that holds",
                            "");
                }
                if (decision != Decision.NONE) {
                    decisions.add(new Decided(
                            rule, unit, subject, decision, by, on.orElse(LocalDate.EPOCH), text(one, "note", inside)));
                }
            }
            return decisions;
        }

        private boolean isWordNone(Node.Fields fields) {
            return fields.get("decision")
                    .filter(node -> node instanceof Node.Scalar scalar
                            && Values.word(scalar.text().strip()).equals(Words.of(Decision.NONE)))
                    .isPresent();
        }

        private void disputes(Node.Fields unit, Place place, Observations.Builder builder) {
            Place inside = place.to("disputed");
            Set<String> tags = new LinkedHashSet<>();
            List<Node> all = list(unit, "disputed", inside);
            if (!all.isEmpty()) {
                Observations sofar = builder.build();
                layout.equipment.values().forEach(equipment -> sofar.roster(equipment.kind.id())
                        .tags()
                        .forEach(tag -> tags.add(tag.name())));
            }
            int number = 0;
            for (Node node : all) {
                Place one = inside.to(String.valueOf(++number));
                Optional<Node.Fields> fields = fields(node, one, "a group with the keys rule, subject, because");
                if (fields.isEmpty()) {
                    continue;
                }
                close(fields.get(), one, List.of("rule", "subject", "because"));
                String rule = required(fields.get(), "rule", one);
                String because = required(fields.get(), "because", one);
                String subject = text(fields.get(), "subject", one);
                int slash = subject.indexOf('/');
                String tag = slash < 0 ? subject : subject.substring(0, slash);
                if (!tag.isEmpty() && !tags.contains(tag)) {
                    wrong(
                            fields.get().get("subject").orElseThrow(),
                            one.to("subject"),
                            "nothing described here has the tag \"" + Node.shortened(tag) + "\"",
                            tags.isEmpty() ? "no subject" : "one of " + String.join(", ", tags),
                            Nearest.to(tag, tags).orElse(""));
                }
                builder.dispute(new Observations.Dispute(rule, subject, because));
            }
        }

        // ---- small steps

        /** Keeps a mistake; a file with very many is not read to its end. */
        private void add(Mistake mistake) {
            mistakes.add(mistake);
            if (mistakes.size() >= NodeReader.MOST_MISTAKES) {
                throw sorted();
            }
        }

        private Mistakes sorted() {
            mistakes.sort(Comparator.comparingInt(Mistake::line).thenComparingInt(Mistake::column));
            return new Mistakes(mistakes);
        }

        private void wrong(Node node, Place place, String what, String expected, String nearest) {
            add(new Mistake(file, node.line(), node.column(), place.path(), what, expected, nearest));
        }

        /** Says that a key is missing, unless a misspelt one stands for it. */
        private void missing(Node.Fields fields, Place place, String key, String what, String expected) {
            if (!meant.contains(place.to(key).path())) {
                wrong(fields, place, what, expected, "");
            }
        }

        private boolean isBlank(Node node) {
            return node instanceof Node.Scalar scalar && scalar.isBlank();
        }

        private boolean isBlank(Node.Fields fields, String key) {
            Optional<Node> node = fields.get(key);
            return node.isEmpty() || isBlank(node.get());
        }

        private Optional<Node.Fields> fields(Node node, Place place, String expected) {
            if (node instanceof Node.Fields fields) {
                return Optional.of(fields);
            }
            boolean isColonStuck =
                    node instanceof Node.Scalar scalar && scalar.text().indexOf(':') > 0;
            wrong(
                    node,
                    place,
                    "found " + node.shape(),
                    isColonStuck ? "a space after the colon, where a key and its value are meant" : expected,
                    "");
            return Optional.empty();
        }

        /** The group under a key; an empty one where the key is not there or has nothing after it. */
        private Node.Fields group(Node.Fields fields, String key, Place place) {
            Optional<Node> node = fields.get(key);
            if (node.isPresent() && !isBlank(node.get())) {
                Optional<Node.Fields> group = fields(node.get(), Place.top(key), "a group of keys");
                if (group.isPresent()) {
                    return group.get();
                }
            }
            Node at = node.orElse(fields);
            return new Node.Fields(Map.of(), at.line(), at.column());
        }

        private List<Node> list(Node.Fields fields, String key, Place place) {
            Optional<Node> node = fields.get(key);
            if (node.isEmpty() || isBlank(node.get())) {
                return List.of();
            }
            if (node.get() instanceof Node.Items items) {
                return items.all();
            }
            wrong(node.get(), place, "found " + node.get().shape(), "a list: each of them begins with a dash", "");
            return List.of();
        }

        private Optional<String> scalar(Node node, Place place, String expected) {
            if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
                return Optional.of(scalar.text().strip());
            }
            wrong(node, place, "found " + node.shape(), expected, "");
            return Optional.empty();
        }

        /** The text under a key; empty where the key is not there or has nothing after it. */
        private String text(Node.Fields fields, String key, Place place) {
            if (isBlank(fields, key)) {
                return "";
            }
            return scalar(fields.get(key).orElseThrow(), place.to(key), "a text")
                    .orElse("");
        }

        private String required(Node.Fields fields, String key, Place place) {
            if (isBlank(fields, key)) {
                missing(fields, place, key, "\"" + key + "\" is missing", key + ":");
            }
            return text(fields, key, place);
        }

        private List<String> texts(Node.Fields fields, String key, Place place) {
            if (isBlank(fields, key)) {
                return List.of();
            }
            Node node = fields.get(key).orElseThrow();
            List<String> texts = new ArrayList<>();
            for (Node one : node instanceof Node.Items items ? items.all() : List.of(node)) {
                scalar(one, place.to(key), "names of pictures").ifPresent(texts::add);
            }
            return texts;
        }

        private String time(Node.Fields fields, String key, Place place) {
            String text = text(fields, key, place);
            return text.isEmpty()
                    ? ""
                    : fit(fields.get(key).orElseThrow(), place.to(key), () -> Values.time(text))
                            .orElse("");
        }

        private Optional<LocalDate> day(Node.Fields fields, String key, Place place) {
            Node node = fields.get(key).orElseThrow();
            return scalar(node, place.to(key), "a date such as 2026-09-14")
                    .flatMap(text -> fit(node, place.to(key), () -> Values.day(text)));
        }

        private <E extends Enum<E>> E word(Node.Fields fields, String key, Class<E> type, E otherwise, Place place) {
            String text = text(fields, key, place);
            if (text.isEmpty()) {
                return otherwise;
            }
            String word = Values.word(text);
            List<String> words = new ArrayList<>();
            for (E constant : type.getEnumConstants()) {
                if (Words.of(constant).equals(word)) {
                    return constant;
                }
                words.add(Words.of(constant));
            }
            wrong(
                    fields.get(key).orElseThrow(),
                    place.to(key),
                    "\"" + Node.shortened(text) + "\" is not known here",
                    "one of " + String.join(", ", words),
                    Nearest.to(word, words).orElse(""));
            return otherwise;
        }

        /** An id or a tag: one that can be typed again next year and shown anywhere. */
        private String name(Node.Fields fields, String key, Place place) {
            Node node = fields.get(key).orElseThrow();
            Optional<String> text = scalar(node, place.to(key), "a short name");
            if (text.isEmpty()) {
                return "";
            }
            String name = text.get();
            String what = "";
            if (!Plain.of(name).equals(name)) {
                what = "holds a character that cannot be seen";
            } else if (name.indexOf('/') >= 0 || name.indexOf('\\') >= 0) {
                what = "holds a stroke";
            } else if (name.equalsIgnoreCase(Subjects.NOT_LISTED)) {
                what = "is kept for those that nobody described";
            } else if (name.length() > LONGEST_NAME) {
                what = "is longer than " + LONGEST_NAME + " characters";
            }
            if (what.isEmpty()) {
                return name;
            }
            wrong(
                    node,
                    place.to(key),
                    "\"" + Node.shortened(name) + "\" " + what,
                    "a short name of letters, digits, hyphens and spaces",
                    "");
            return "";
        }

        /** Names an id or a tag that stands there twice; capitals do not tell two apart. */
        private boolean once(
                Node.Fields fields, String key, String name, Map<String, Integer> lines, Place place, String called) {
            Node node = fields.get(key).orElseThrow();
            Integer before = lines.putIfAbsent(name.toLowerCase(Locale.ROOT), node.line());
            if (before == null) {
                return true;
            }
            wrong(
                    node,
                    place,
                    "the " + called + " \"" + name + "\" stands here a second time; the first is on line " + before,
                    "each " + called + " once, capitals or not",
                    "");
            return false;
        }

        /** Names every key that has no meaning in a place. */
        private void close(Node.Fields fields, Place place, Collection<String> known) {
            for (Node.Field field : fields.all().values()) {
                if (known.contains(field.key())) {
                    continue;
                }
                Optional<String> nearest = Nearest.to(Words.hyphened(Values.word(field.key())), known);
                nearest.ifPresent(key -> meant.add(place.to(key).path()));
                List<String> places = nearest.isPresent() ? List.of() : layout.placesOf(field.key());
                boolean reckoned = layout.vocabulary.items().stream()
                        .anyMatch(item -> item.isReckoned()
                                && (item.name().equals(field.key()) || item.id().equals(field.key())));
                String expected = places.isEmpty()
                        ? "one of " + String.join(", ", known)
                        : "it under " + String.join(" or ", places);
                add(new Mistake(
                        file,
                        field.line(),
                        field.column(),
                        place.path(),
                        "\"" + Node.shortened(field.key()) + "\" is no key here"
                                + (reckoned && places.isEmpty() ? "; it is worked out and not asked" : ""),
                        expected,
                        nearest.orElse("")));
            }
        }

        private interface Reading<T> {
            T read() throws Unfit;
        }

        private <T> Optional<T> fit(Node node, Place place, Reading<T> reading) {
            try {
                return Optional.of(reading.read());
            } catch (Unfit unfit) {
                wrong(node, place, unfit.getMessage(), unfit.expected, unfit.nearest);
                return Optional.empty();
            }
        }
    }
}
