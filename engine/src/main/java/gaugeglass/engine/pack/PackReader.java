package gaugeglass.engine.pack;

import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.LimitLayer;
import gaugeglass.engine.book.LimitLayer.Level;
import gaugeglass.engine.book.LimitLayer.Setting;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.TableReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Reads what a pack says, strictly; whether it may say so is seen when it is laid over a rulebook. */
public final class PackReader {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern VERSION = Pattern.compile("\\d{1,4}\\.\\d{1,4}\\.\\d{1,4}");
    private static final String LIMITS = "limits.yaml";
    private static final String LIMITS_TABLE = "limits.csv";

    private final PackFiles files;
    private final String unitKey;
    private final List<Mistake> mistakes = new ArrayList<>();

    private PackReader(PackFiles files, String unitKey) {
        this.files = files;
        this.unitKey = unitKey;
    }

    /**
     * Reads a pack.
     *
     * @param unitKey what the unit that is judged is called
     * @throws Mistakes with everything that is wrong in it, of all its files
     */
    public static Pack read(PackFiles files, String unitKey) {
        PackReader reader = new PackReader(files, unitKey);
        Pack pack = reader.pack();
        if (!reader.mistakes.isEmpty()) {
            throw new Mistakes(reader.mistakes);
        }
        return pack;
    }

    private Pack pack() {
        Form form = form(PackFiles.MANIFEST).orElseThrow(() -> new Mistakes(mistakes));
        String name = form.text("pack");
        if (!name.isEmpty() && (!NAME.matcher(name).matches() || name.length() > 40)) {
            form.wrong("pack", "\"" + name + "\" is no name of a pack", "small letters, digits and hyphens", "");
        }
        String title = form.text("title");
        String version = form.text("version");
        if (!version.isEmpty() && !VERSION.matcher(version).matches()) {
            form.wrong("version", "\"" + version + "\" is no version", "three numbers with dots, such as 1.0.0", "");
        }
        if (!form.has("level")) {
            form.text("level");
        }
        Level level = form.word("level", Level.class, Level.COMPANY);
        String tailors = form.text("tailors");
        String madeFor = form.text("made-for");
        String by = form.text("by");
        form.text("note", "");
        form.close();
        LimitLayer limits = new LimitLayer(
                title + " " + version, level, limits(), files.place(files.has(LIMITS_TABLE) ? LIMITS_TABLE : LIMITS));
        Map<String, Caution> cautions = new LinkedHashMap<>();
        each("cautions.yaml", "cautions", one -> {
            Caution caution = BookReader.caution(one);
            if (cautions.put(caution.id(), caution) != null) {
                one.wrong("id", "\"" + caution.id() + "\" stands here a second time", "an id of its own", "");
            }
        });
        Map<String, Remedy> remedies = new LinkedHashMap<>();
        each("remedies.yaml", "remedies", one -> {
            Remedy remedy = BookReader.remedy(one);
            if (remedies.put(remedy.id(), remedy) != null) {
                one.wrong("id", "\"" + remedy.id() + "\" stands here a second time", "an id of its own", "");
            }
        });
        return new Pack(
                files,
                name,
                title,
                version,
                level,
                tailors,
                madeFor,
                by,
                limits,
                settled(),
                wordings(),
                urgencies(),
                dropped(),
                waivers(title + " " + version),
                replaced(),
                cautions,
                remedies);
    }

    private void each(String file, String key, Consumer<Form> take) {
        form(file).ifPresent(form -> {
            if (!form.has(key)) {
                form.text(key);
            }
            form.forms(key).forEach(take);
            form.close();
        });
    }

    private static Pack.Place place(Form form) {
        return new Pack.Place(form.file(), form.fields().line(), form.fields().column(), form.where());
    }

    private List<Pack.Wording> wordings() {
        List<Pack.Wording> all = new ArrayList<>();
        form("words.yaml").ifPresent(form -> {
            if (!form.has("words")) {
                form.text("words");
            }
            form.form("words").byKey().forEach((card, one) -> {
                all.add(new Pack.Wording(
                        card,
                        one.text("title", ""),
                        one.text("why", ""),
                        one.text("do", ""),
                        one.text("also-do", ""),
                        one.text("not-when", ""),
                        one.texts("add-cautions"),
                        place(one)));
                one.close();
            });
            form.close();
        });
        return all;
    }

    private List<Pack.Urgencies> urgencies() {
        List<Pack.Urgencies> all = new ArrayList<>();
        form("urgencies.yaml").ifPresent(form -> {
            if (!form.has("urgencies")) {
                form.text("urgencies");
            }
            Form bands = form.form("urgencies");
            bands.fields().all().forEach((name, field) -> {
                String[] parts = name.split(" */ *", -1);
                Pack.Place place = new Pack.Place(form.file(), field.line(), field.column(), bands.under(name));
                Urgency urgency = bands.word(name, Urgency.class, Urgency.STOP);
                if (parts.length == 2) {
                    all.add(new Pack.Urgencies(parts[0], parts[1], urgency, place));
                } else {
                    mistakes.add(place.wrong("\"" + name + "\" does not name a card and a band", "card / band", ""));
                }
            });
            form.close();
        });
        return all;
    }

    private List<Pack.Dropped> dropped() {
        List<Pack.Dropped> all = new ArrayList<>();
        each("checklist.yaml", "drop", one -> {
            all.add(new Pack.Dropped(one.text("item"), one.text("why"), place(one)));
            one.close();
        });
        return all;
    }

    private List<Pack.Replaced> replaced() {
        List<Pack.Replaced> all = new ArrayList<>();
        each("replaced.yaml", "replaced", one -> {
            Pack.Replaced replaced = new Pack.Replaced(one.text("check"), one.text("why"), place(one));
            if (all.stream().anyMatch(other -> other.check().equals(replaced.check()))) {
                one.wrong("check", "\"" + replaced.check() + "\" stands here a second time", "each check once", "");
            }
            all.add(replaced);
            one.close();
        });
        return all;
    }

    private List<Pack.Waiving> waivers(String pack) {
        List<Pack.Waiving> all = new ArrayList<>();
        each("waivers.yaml", "waivers", one -> {
            Waiver waiver = new Waiver(
                    one.text("check"),
                    one.text("site"),
                    one.text(unitKey, ""),
                    one.text("subject", ""),
                    one.text("by"),
                    one.text("why"),
                    day(one, "from"),
                    day(one, "until"),
                    pack);
            if (waiver.until().isBefore(waiver.from())) {
                one.wrong("until", "it ends before it begins", "a day after " + waiver.from(), "");
            }
            all.add(new Pack.Waiving(waiver, place(one)));
            one.close();
        });
        return all;
    }

    private static LocalDate day(Form form, String key) {
        String text = form.text(key);
        try {
            return text.isEmpty() ? LocalDate.EPOCH : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            form.wrong(key, "\"" + text + "\" is no date", "a date such as 2026-09-14", "");
            return LocalDate.EPOCH;
        }
    }

    /** A file as a group of keys; empty where the pack does not have it, or it cannot be taken apart. */
    private Optional<Form> form(String file) {
        if (!files.has(file)) {
            return Optional.empty();
        }
        try {
            String place = files.place(file);
            return Optional.of(Form.of(place, "", NodeReader.read(place, files.text(file), mistakes), mistakes));
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
            return Optional.empty();
        }
    }

    private Map<String, Setting> limits() {
        if (files.has(LIMITS) && files.has(LIMITS_TABLE)) {
            mistakes.add(new Mistake(
                    files.place(LIMITS_TABLE), 0, 0, "", "there is a " + LIMITS + " too", "one of the two", ""));
        }
        Map<String, Setting> settings = new LinkedHashMap<>();
        form(LIMITS).ifPresent(form -> {
            settings.putAll(LimitLayer.settings(form.form("limits")));
            if (!form.has("limits") && !form.has("own")) {
                form.text("limits");
            }
            if (form.has("own") && !files.hasRules()) {
                form.wrong(
                        "own",
                        "the pack has limits of its own, but no rules that use them",
                        "rules, or no such limits",
                        "");
            }
            form.close();
        });
        if (files.has(LIMITS_TABLE)) {
            try {
                String place = files.place(LIMITS_TABLE);
                for (Form row : TableReader.read(place, files.text(LIMITS_TABLE), mistakes)) {
                    row(row, settings);
                }
            } catch (Mistakes e) {
                mistakes.addAll(e.all());
            }
        }
        return settings;
    }

    private void row(Form row, Map<String, Setting> settings) {
        String id = row.text("limit");
        String source = row.text("source", "");
        Source.Known known = row.word("known", Source.Known.class, Source.Known.READ_SECOND_HAND);
        Node value = row.node("value").orElse(row.fields());
        Setting setting = new Setting(
                row.text("value"),
                value.line(),
                value.column(),
                source.isEmpty() ? List.of() : List.of(new Source(source, known)));
        row.text("note", "");
        row.close();
        if (settings.put(id, setting) != null) {
            row.wrong("limit", "\"" + id + "\" stands here a second time", "each limit once", "");
        }
    }

    private List<Pack.Settled> settled() {
        List<Pack.Settled> settled = new ArrayList<>();
        form("settled.yaml").ifPresent(form -> {
            for (Form one : form.forms("settled")) {
                settled.add(new Pack.Settled(
                        one.text("item"),
                        one.text("answer"),
                        BookReader.sources(one),
                        one.fields().line(),
                        one.fields().column()));
                one.close();
            }
            if (!form.has("settled")) {
                form.text("settled");
            }
            form.close();
        });
        return settled;
    }
}
