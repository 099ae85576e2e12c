package gaugeglass.cli.printed;

import gaugeglass.cli.report.Naming;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.PartWords;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What lines of work on one unit need, with what was seen of each thing filled in; as left where anything was done. */
final class Parts {
    private static final String NOT_KNOWN = "not known";

    private final Book book;
    private final Naming naming;
    private final Optional<Observations> observations;

    Parts(Book book, Naming naming, Inspection inspection, String unit) {
        this.book = book;
        this.naming = naming;
        this.observations = inspection.units().stream()
                .filter(one -> one.id().equals(unit))
                .map(Inspection.Visited::observations)
                .findFirst();
    }

    /**
     * What a line of work needs.
     *
     * @param findings those that it puts right
     * @return in the remedy's order; the same for several things is one part with its number
     */
    List<WorkLine.Part> of(Remedy remedy, List<Finding> findings) {
        List<WorkLine.Part> parts = new ArrayList<>();
        for (String part : remedy.parts()) {
            Set<String> subjects = new LinkedHashSet<>();
            for (Finding finding : findings) {
                if (isSeenOf(part, finding)) {
                    subjects.add(finding.subject());
                }
            }
            if (subjects.isEmpty()) {
                findings.forEach(finding -> subjects.add(finding.subject()));
            }
            if (subjects.size() > 1) {
                // A finding about the unit beside others about its things asks for nothing more.
                subjects.remove("");
            }
            Map<String, List<String>> byWords = new LinkedHashMap<>();
            for (String subject : subjects) {
                String words = PartWords.filled(part, name -> said(name, subject));
                byWords.computeIfAbsent(words, w -> new ArrayList<>()).add(subject);
            }
            byWords.forEach((words, all) -> parts.add(new WorkLine.Part(words, all)));
        }
        return parts;
    }

    /** What a line of work needs once. */
    List<String> takeAlong(Remedy remedy) {
        return remedy.takeAlong().stream()
                .map(text -> PartWords.filled(text, name -> said(name, "")))
                .toList();
    }

    /** Whether what stands in braces is seen of what a finding is about. */
    private boolean isSeenOf(String part, Finding finding) {
        String about = book.card(finding.rule()).about();
        boolean[] seen = {true};
        PartWords.filled(part, name -> {
            Optional<PartWords.Place> place = place(name);
            seen[0] &= place.isPresent()
                    && (!isCounted(place.get().item())
                            || place.get().item().kind().equals(about));
            return "";
        });
        return seen[0];
    }

    private Optional<PartWords.Place> place(String name) {
        return observations.flatMap(seen -> PartWords.place(seen.vocabulary(), name));
    }

    private boolean isCounted(ItemType item) {
        return observations
                .orElseThrow()
                .vocabulary()
                .kind(item.kind())
                .orElseThrow()
                .isCounted();
    }

    private String said(String name, String subject) {
        Optional<PartWords.Place> place = place(name);
        if (place.isEmpty()) {
            return NOT_KNOWN;
        }
        ItemType item = place.get().item();
        int value = place.get().value();
        List<Object> keys = isCounted(item) ? List.of(subject) : List.of();
        Observations seen = observations.orElseThrow();
        return seen.answer(item, keys, State.AS_LEFT)
                .or(() -> seen.answer(item, keys, State.AS_FOUND))
                .flatMap(answer -> answer.fact())
                .map(fact -> value < 0
                        ? naming.values(item, fact)
                        : Words.spoken(item.valuesOf(fact).get(value)))
                .orElse(NOT_KNOWN);
    }
}
