package gaugeglass.engine.build;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Clue;
import gaugeglass.engine.book.Diagnosis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.PartWords;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks that the parts of a rulebook fit one another and that nothing in it is unused. */
final class BookLint {
    private final RulebookSource source;
    private final List<Mistake> mistakes;

    BookLint(RulebookSource source, List<Mistake> mistakes) {
        this.source = source;
        this.mistakes = mistakes;
    }

    void check() {
        reckonings();
        if (!mistakes.isEmpty()) {
            return;
        }
        Behind behind = new Behind(source.vocabulary(), source.trade());
        Set<String> ruled = new HashSet<>();
        Set<String> limitsUsed = new HashSet<>();
        for (RuleEntry entry : source.entries()) {
            ruled.add(entry.card() + " / " + entry.band());
            Set<String> limits = behind.limits(entry);
            limitsUsed.addAll(limits);
            firm(entry, limits);
        }
        Set<String> cautionsUsed = new HashSet<>();
        Map<String, Set<String>> remediesUsed = new LinkedHashMap<>();
        for (Card card : source.cards().values()) {
            for (Band band : card.bands().values()) {
                if (!ruled.contains(card.id() + " / " + band.name())) {
                    wrong(
                            card,
                            "no rule is called \"" + card.id() + " / " + band.name() + "\"",
                            "a rule for each band",
                            "");
                }
            }
            for (String caution : card.cautions()) {
                known(card, "caution", caution, source.cautions().keySet());
                cautionsUsed.add(caution);
            }
            if (!card.remedy().isEmpty()) {
                known(card, "remedy", card.remedy(), source.remedies().keySet());
                remediesUsed
                        .computeIfAbsent(card.remedy(), id -> new HashSet<>())
                        .add(card.about());
            }
            if (card.worst() == Urgency.STOP && !card.sign() && card.cautions().isEmpty()) {
                wrong(card, "a stop without a caution", "at least one caution", "");
            }
            if (card.basis() == Basis.STANDARD && card.sources().isEmpty()) {
                wrong(card, "its basis is a standard, but it names none", "sources:", "");
            }
        }
        source.limits().values().forEach(this::limit);
        unused("limits.yaml", "limit", source.limits().keySet(), limitsUsed);
        unused("cautions.yaml", "caution", source.cautions().keySet(), cautionsUsed);
        unused("remedies.yaml", "remedy", source.remedies().keySet(), remediesUsed.keySet());
        source.remedies()
                .values()
                .forEach(remedy -> mistakes.addAll(PartWords.mistakes(
                        "remedies.yaml",
                        remedy,
                        source.vocabulary(),
                        remediesUsed.getOrDefault(remedy.id(), Set.of()))));
        source.diagnoses().forEach(this::diagnosis);
    }

    /** A reckoning that asked for a limit which is not there would end a visit's judging. */
    private void reckonings() {
        for (Reckoning reckoning : source.trade().reckonings()) {
            ItemType gives = source.vocabulary().item(reckoning.gives()).orElseThrow();
            for (Class<? extends Record> need : reckoning.needs()) {
                ItemType item = source.vocabulary().item(need).orElseThrow();
                if (gives.isStructural() && !item.isStructural()) {
                    mistakes.add(new Mistake(
                            reckoning.getClass().getName(),
                            0,
                            0,
                            gives.id(),
                            "it is said to tell what is fitted, but rests on " + item.id() + ", which does not",
                            "all it needs structural, or itself not",
                            ""));
                }
            }
            for (String limit : reckoning.limits()) {
                if (!source.limits().containsKey(limit)) {
                    mistakes.add(new Mistake(
                            reckoning.getClass().getName(),
                            0,
                            0,
                            "",
                            "\"" + limit + "\" is no limit",
                            "a limit of the table",
                            near(limit, source.limits().keySet())));
                }
            }
        }
    }

    /** No figure that is remembered with less than high certainty may forbid firing. */
    private void firm(RuleEntry entry, Set<String> limits) {
        Card card = source.cards().get(entry.card());
        Band band = card.band(entry.band()).orElseThrow();
        if (card.sign() || band.urgency() != Urgency.STOP) {
            return;
        }
        for (String id : limits) {
            Limit limit = source.limits().get(id);
            boolean firm = limit.basis() != Basis.STANDARD
                    || limit.sources().stream().map(Source::known).anyMatch(Source.Known::isFirm);
            if (!firm) {
                wrong(
                        card,
                        "its stop hangs on " + id + ", which is remembered without high certainty",
                        "a firm source",
                        "");
            }
        }
    }

    private void limit(Limit limit) {
        try {
            Limits.moved(limit);
        } catch (IllegalArgumentException e) {
            mistakes.add(new Mistake(
                    "limits.yaml",
                    0,
                    0,
                    limit.id(),
                    "its step \"" + limit.step() + "\" cannot be added to " + limit.written(),
                    "a " + BookReader.measures(limit.value()),
                    ""));
        }
        if (limit.basis() == Basis.STANDARD && limit.sources().isEmpty()) {
            mistakes.add(new Mistake(
                    "limits.yaml", 0, 0, limit.id(), "its basis is a standard, but it names none", "sources:", ""));
        }
    }

    private void diagnosis(Diagnosis diagnosis) {
        for (List<Clue> clues : List.of(diagnosis.points(), diagnosis.against())) {
            for (Clue clue : clues) {
                if (!source.cards().containsKey(clue.card())) {
                    mistakes.add(new Mistake(
                            "diagnoses.yaml",
                            0,
                            0,
                            diagnosis.id(),
                            "\"" + clue.card() + "\" is no card",
                            "the id of a card",
                            near(clue.card(), source.cards().keySet())));
                }
            }
        }
        if (source.vocabulary().item(diagnosis.settledBy()).isEmpty()) {
            mistakes.add(new Mistake(
                    "diagnoses.yaml",
                    0,
                    0,
                    diagnosis.id(),
                    "\"" + diagnosis.settledBy() + "\" is no observation",
                    "the id of an item",
                    near(
                            diagnosis.settledBy(),
                            source.vocabulary().items().stream()
                                    .map(i -> i.id())
                                    .toList())));
        }
    }

    private void known(Card card, String what, String id, Set<String> all) {
        if (!all.contains(id)) {
            wrong(card, "\"" + id + "\" is no " + what, "a " + what + " of the table", near(id, all));
        }
    }

    private void unused(String file, String what, Set<String> all, Set<String> used) {
        for (String id : all) {
            if (!used.contains(id)) {
                mistakes.add(
                        new Mistake(file, 0, 0, id, "the " + what + " is used by nothing", "a use, or none of it", ""));
            }
        }
    }

    private static String near(String typed, Collection<String> known) {
        return Nearest.to(typed, known).orElse("");
    }

    private void wrong(Card card, String what, String expected, String nearest) {
        mistakes.add(new Mistake(card.file(), card.line(), 0, card.id(), what, expected, nearest));
    }
}
