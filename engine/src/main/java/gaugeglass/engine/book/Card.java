package gaugeglass.engine.book;

import gaugeglass.engine.vocabulary.Stage;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words of one practice; its conditions are the rules that bear its name.
 *
 * @param id the practice's name for good
 * @param subject the stem of the files it stands in
 * @param title what is found, as a short sentence
 * @param about the kind of thing it is about; the unit's kind where it is about the whole
 * @param stage when in a visit it can be judged
 * @param consequence what suffers
 * @param release whether it is a proof that release waits for
 * @param sign whether it is only a sign, evidence for a diagnosis, and never a finding
 * @param bands its degrees, by name, most urgent first
 * @param why the reason, for an owner
 * @param action what to do
 * @param remedy the id of the work that puts it right; empty where there is none
 * @param cautions ids of cautions
 * @param notWhen when the finding is not right though its conditions hold
 * @param basis what it stands on
 * @param sources documents
 * @param status trial or settled
 * @param since the version it first stood in
 * @param file the file it stands in
 * @param line its line there
 */
public record Card(
        String id,
        String subject,
        String title,
        String about,
        Stage stage,
        Consequence consequence,
        boolean release,
        boolean sign,
        Map<String, Band> bands,
        String why,
        String action,
        String remedy,
        List<String> cautions,
        String notWhen,
        Basis basis,
        List<Source> sources,
        String status,
        String since,
        String file,
        int line) {

    public Optional<Band> band(String name) {
        return Optional.ofNullable(bands.get(name));
    }

    /** The same in other words. */
    public Card withWords(
            String otherTitle, String otherWhy, String otherAction, List<String> otherCautions, String otherNotWhen) {
        return new Card(
                id,
                subject,
                otherTitle,
                about,
                stage,
                consequence,
                release,
                sign,
                bands,
                otherWhy,
                otherAction,
                remedy,
                otherCautions,
                otherNotWhen,
                basis,
                sources,
                status,
                since,
                file,
                line);
    }

    /** The same with other degrees. */
    public Card withBands(Map<String, Band> others) {
        return new Card(
                id,
                subject,
                title,
                about,
                stage,
                consequence,
                release,
                sign,
                others,
                why,
                action,
                remedy,
                cautions,
                notWhen,
                basis,
                sources,
                status,
                since,
                file,
                line);
    }

    /** The most urgent thing it can say. */
    public Urgency worst() {
        return bands.values().stream()
                .map(Band::urgency)
                .min(Urgency::compareTo)
                .orElse(Urgency.WATCH);
    }
}
