package gaugeglass.engine;

import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Gate;
import gaugeglass.engine.Assessment.LimitUsed;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Said;
import gaugeglass.engine.Assessment.Standing;
import gaugeglass.engine.Assessment.Waived;
import gaugeglass.engine.Assessment.WaiverLeft;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Clue;
import gaugeglass.engine.book.Diagnosis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.drools.Evidence;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** One assessment being made. */
final class Assessing {
    /** Most urgent first; the written order of findings. */
    static final Comparator<Finding> RANKING = Comparator.comparing(Finding::urgency)
            .thenComparing(Finding::consequence)
            .thenComparing(Finding::rule)
            .thenComparing(Finding::subject);

    private final Rulebook rulebook;
    private final Observations observations;
    private final LocalDate date;
    private final String site;

    Assessing(Rulebook rulebook, Observations observations, LocalDate date, String site) {
        this.site = site;
        this.rulebook = rulebook;
        this.observations = observations;
        this.date = date;
    }

    /** All the verdicts on one card and subject. */
    private record Judged(Card card, String subject, Word word, List<Verdict> found, List<Verdict> open) {

        /** The highest band found. */
        Optional<Band> highest() {
            Band highest = null;
            for (Verdict verdict : found) {
                Band band = band(card, verdict);
                highest = highest == null || band.urgency().isAbove(highest.urgency()) ? band : highest;
            }
            return Optional.ofNullable(highest);
        }

        /** The most urgent thing an open rule may yet say, where that is more than what was found. */
        Optional<Urgency> mayBe() {
            if (open.isEmpty()) {
                return Optional.empty();
            }
            Optional<Band> highest = highest();
            Urgency most = null;
            for (Verdict verdict : open) {
                Urgency urgency = band(card, verdict).urgency();
                most = most == null || urgency.isAbove(most) ? urgency : most;
            }
            return highest.isEmpty() || most.isAbove(highest.get().urgency()) ? Optional.of(most) : Optional.empty();
        }

        /** Whether the band that was found before is above those found now, and not ruled out. */
        boolean isWorseOpen(Judged before) {
            Band worse = before.highest().orElseThrow();
            return worse.urgency().isAbove(highest().orElseThrow().urgency())
                    && open.stream().anyMatch(verdict -> verdict.rule().band().equals(worse.name()));
        }

        List<Missing> missing() {
            if (mayBe().isEmpty()) {
                return List.of();
            }
            Set<Missing> missing = new TreeSet<>();
            for (Verdict verdict : open) {
                if (highest().isEmpty()
                        || band(card, verdict).urgency().isAbove(highest().get().urgency())) {
                    missing.addAll(verdict.missing());
                }
            }
            return List.copyOf(missing);
        }

        private static Band band(Card card, Verdict verdict) {
            return card.band(verdict.rule().band())
                    .orElseThrow(() -> new IllegalStateException(
                            "no band for " + verdict.rule().name()));
        }
    }

    Assessment assess() {
        Map<Ref, Judged> asLeft = judge(State.AS_LEFT);
        Map<Ref, Judged> asFound = observations.hasAsLeft() ? judge(State.AS_FOUND) : asLeft;
        List<Finding> findings = findings(asFound, asLeft);
        List<Outcome> outcomes = new ArrayList<>();
        for (Judged judged : asLeft.values()) {
            if (!judged.card().sign()) {
                outcomes.add(new Outcome(
                        judged.card().id(), judged.subject(), judged.word(), judged.mayBe(), judged.missing()));
            }
        }
        Gate testFiring = testFiring(findings, asLeft);
        Gate release = release(findings, asLeft);
        List<Waived> waived = new ArrayList<>();
        List<WaiverLeft> left = new ArrayList<>();
        if (!rulebook.waivers().isEmpty()) {
            waive(findings, waived, left);
        }
        return new Assessment(
                observations.unit(),
                date,
                testFiring,
                release,
                findings,
                causes(asFound),
                outcomes,
                wanting(outcomes, testFiring, release),
                waived,
                left);
    }

    /** Takes waived findings out of the others. The gates were judged before, and do not know of waivers. */
    private void waive(List<Finding> findings, List<Waived> waived, List<WaiverLeft> left) {
        for (Waiver waiver : rulebook.waivers()) {
            if (!waiver.isAt(site, observations.unit())) {
                continue;
            }
            List<Finding> covered = new ArrayList<>();
            for (Finding finding : findings) {
                if (waiver.covers(finding.rule(), finding.subject()) && finding.isStanding()) {
                    covered.add(finding);
                }
            }
            if (covered.isEmpty()) {
                left.add(new WaiverLeft(waiver, "nothing was found that it could cover"));
                continue;
            }
            for (Finding finding : covered) {
                if (!waiver.holdsOn(date)) {
                    left.add(new WaiverLeft(
                            waiver,
                            date.isAfter(waiver.until())
                                    ? "it lapsed after " + waiver.until() + ", and what it covered is found"
                                    : "it begins on " + waiver.from()));
                } else if (finding.urgency() == Urgency.STOP) {
                    left.add(new WaiverLeft(waiver, "what was found forbids firing, and that is never waived"));
                } else {
                    findings.remove(finding);
                    waived.add(new Waived(finding, waiver));
                }
            }
        }
        waived.sort(Comparator.comparing(Waived::finding, RANKING));
    }

    private Map<Ref, Judged> judge(State state) {
        Facts facts = Facts.of(observations, state, date, rulebook.book().allLimits(), rulebook.reckonings());
        List<Verdict> verdicts = rulebook.judges()
                .judge(facts, rule -> rulebook.counted(rulebook.book().card(rule.card())));
        Map<Ref, List<Verdict>> grouped = new LinkedHashMap<>();
        for (Card card : rulebook.book().cards().values()) {
            for (String subject : subjects(card, facts)) {
                grouped.put(new Ref(card.id(), subject), new ArrayList<>());
            }
        }
        for (Verdict verdict : verdicts) {
            grouped.get(new Ref(verdict.rule().card(), verdict.subject())).add(verdict);
        }
        Map<Ref, Judged> judged = new LinkedHashMap<>();
        grouped.forEach((ref, all) -> judged.put(ref, judged(ref, all)));
        return judged;
    }

    private List<String> subjects(Card card, Facts facts) {
        String kind = rulebook.counted(card);
        List<String> subjects = kind.isEmpty() ? List.of() : facts.tags(kind);
        return subjects.isEmpty() ? List.of(Subjects.UNIT) : subjects;
    }

    private Judged judged(Ref ref, List<Verdict> verdicts) {
        List<Verdict> found = new ArrayList<>();
        List<Verdict> open = new ArrayList<>();
        boolean applies = false;
        for (Verdict verdict : verdicts) {
            switch (verdict.outcome()) {
                case FOUND -> found.add(verdict);
                case UNDETERMINED -> open.add(verdict);
                case IN_ORDER -> applies = true;
                case NOT_APPLICABLE -> {}
            }
        }
        Word word = !found.isEmpty()
                ? Word.FOUND
                : !open.isEmpty() ? Word.UNDETERMINED : applies ? Word.IN_ORDER : Word.NOT_APPLICABLE;
        return new Judged(rulebook.book().card(ref.rule()), ref.subject(), word, found, open);
    }

    private List<Finding> findings(Map<Ref, Judged> asFound, Map<Ref, Judged> asLeft) {
        Set<Ref> refs = new LinkedHashSet<>(asFound.keySet());
        refs.addAll(asLeft.keySet());
        List<Finding> findings = new ArrayList<>();
        for (Ref ref : refs) {
            Judged before = asFound.get(ref);
            Judged after = asLeft.get(ref);
            boolean foundBefore = before != null && before.word() == Word.FOUND;
            boolean foundAfter = after != null && after.word() == Word.FOUND;
            if (!foundBefore && !foundAfter
                    || (foundAfter ? after : before).card().sign()) {
                continue;
            }
            if (foundAfter && foundBefore && after.isWorseOpen(before)) {
                findings.add(finding(before, Standing.STANDING, List.of()));
            } else if (foundAfter) {
                boolean arose =
                        before == null || before.word() == Word.IN_ORDER || before.word() == Word.NOT_APPLICABLE;
                findings.add(finding(after, arose ? Standing.ARISEN : Standing.STANDING, List.of()));
            } else if (after != null && after.word() == Word.UNDETERMINED) {
                // What was found stands until something seen rules it out.
                findings.add(finding(before, Standing.STANDING, List.of()));
            } else {
                findings.add(finding(before, Standing.PUT_RIGHT, retest(before)));
            }
        }
        findings.sort(RANKING);
        return findings;
    }

    private List<Object> retest(Judged before) {
        Set<String> needs = new TreeSet<>();
        before.found().forEach(verdict -> needs.addAll(verdict.rule().needs()));
        List<Object> retest = new ArrayList<>();
        for (Answer answer : observations.answers()) {
            boolean same = answer.keys().isEmpty() || answer.keys().get(0).equals(before.subject());
            if (answer.state() == State.AS_LEFT
                    && same
                    && needs.contains(answer.item().id())) {
                answer.fact().ifPresent(retest::add);
            }
        }
        return retest;
    }

    private Finding finding(Judged judged, Standing state, List<Object> retest) {
        Card card = judged.card();
        Band band = judged.highest().orElseThrow();
        Set<String> seen = new LinkedHashSet<>();
        Map<String, LimitUsed> limits = new TreeMap<>();
        // By identity: the hash of a record is made with generated code, dear on a cold start.
        Set<Object> seenFacts = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Object> evidence = new ArrayList<>();
        for (Verdict verdict : judged.found()) {
            if (!verdict.rule().band().equals(band.name())) {
                continue;
            }
            for (Evidence match : verdict.evidence()) {
                seen.add(Sentences.fill(band.seen(verdict.rule().variant()), match.bound()));
                for (Object fact : match.facts()) {
                    if (fact instanceof Limit limit) {
                        limits.put(limit.id(), used(limit));
                    } else if (seenFacts.add(fact)) {
                        evidence.add(fact);
                    }
                }
            }
        }
        String dispute = observations.disputes().stream()
                .filter(d -> d.rule().equals(card.id()) && d.subject().equals(judged.subject()))
                .map(Observations.Dispute::because)
                .findFirst()
                .orElse("");
        return new Finding(
                card.id(),
                judged.subject(),
                band.urgency(),
                band.name(),
                state,
                card.title(),
                List.copyOf(seen),
                List.copyOf(limits.values()),
                card.why(),
                card.action(),
                card.remedy(),
                card.cautions(),
                card.consequence(),
                card.basis(),
                evidence,
                retest,
                dispute);
    }

    private static LimitUsed used(Limit limit) {
        String setBy = limit.basis() == Basis.STANDARD
                ? limit.firstSource()
                        .map(source -> source.name())
                        .orElse(limit.basis().told())
                : limit.basis().told();
        return new LimitUsed(limit.id(), limit.written(), limit.meaning(), setBy, limit.layer());
    }

    /** Forbidden by a stop of any stage that is there, and by one of an earlier stage not shown to be put right. */
    private Gate testFiring(List<Finding> findings, Map<Ref, Judged> asLeft) {
        List<Ref> against = new ArrayList<>();
        for (Finding finding : findings) {
            Ref ref = new Ref(finding.rule(), finding.subject());
            Judged after = asLeft.get(ref);
            boolean isThere = after != null && after.word() == Word.FOUND;
            if (finding.urgency() == Urgency.STOP
                    && finding.isStanding()
                    && (isThere || rulebook.book().card(finding.rule()).stage().isBeforeFiring())) {
                against.add(ref);
            }
        }
        List<Ref> open = new ArrayList<>();
        asLeft.forEach((ref, judged) -> {
            if (judged.card().stage().isBeforeFiring() && mayStop(judged)) {
                open.add(ref);
            }
        });
        return gate(against, open);
    }

    /** Forbidden by every standing stop and every proof that was found wanting; unknown while one of them is open. */
    private Gate release(List<Finding> findings, Map<Ref, Judged> asLeft) {
        List<Ref> against = new ArrayList<>();
        for (Finding finding : findings) {
            boolean proof = rulebook.book().card(finding.rule()).release();
            if (finding.isStanding() && (finding.urgency() == Urgency.STOP || proof)) {
                against.add(new Ref(finding.rule(), finding.subject()));
            }
        }
        List<Ref> open = new ArrayList<>();
        asLeft.forEach((ref, judged) -> {
            boolean proof = judged.card().release() && judged.word() == Word.UNDETERMINED;
            if (proof || mayStop(judged)) {
                open.add(ref);
            }
        });
        return gate(against, open);
    }

    private static boolean mayStop(Judged judged) {
        return !judged.card().sign()
                && judged.mayBe().filter(u -> u == Urgency.STOP).isPresent();
    }

    private static Gate gate(List<Ref> against, List<Ref> open) {
        Permit permit = !against.isEmpty()
                ? Permit.FORBIDDEN
                : open.isEmpty() ? Permit.NOTHING_FOUND_AGAINST : Permit.NOT_KNOWN;
        return new Gate(permit, against, open);
    }

    private List<Cause> causes(Map<Ref, Judged> judgedByRef) {
        List<Cause> causes = new ArrayList<>();
        Map<String, List<Judged>> judged = new LinkedHashMap<>();
        judgedByRef.forEach((ref, one) ->
                judged.computeIfAbsent(ref.rule(), rule -> new ArrayList<>()).add(one));
        for (Diagnosis diagnosis : rulebook.book().diagnoses()) {
            Set<String> subjects = new LinkedHashSet<>();
            if (diagnosis.about().isEmpty()) {
                subjects.add(Subjects.UNIT);
            } else {
                for (Clue clue : diagnosis.points()) {
                    for (Judged one : judged.getOrDefault(clue.card(), List.of())) {
                        if (one.card().about().equals(diagnosis.about()) && one.word() == Word.FOUND) {
                            subjects.add(one.subject());
                        }
                    }
                }
            }
            for (String subject : subjects) {
                cause(diagnosis, subject, judged).ifPresent(causes::add);
            }
        }
        causes.sort(Comparator.comparingInt((Cause cause) -> -cause.weight())
                .thenComparing(Cause::id)
                .thenComparing(Cause::subject));
        return causes;
    }

    private Optional<Cause> cause(Diagnosis diagnosis, String subject, Map<String, List<Judged>> judged) {
        List<Said> points = new ArrayList<>();
        int weightFor = weigh(diagnosis, diagnosis.points(), subject, judged, points);
        if (weightFor < diagnosis.enough()) {
            return Optional.empty();
        }
        List<Said> against = new ArrayList<>();
        int weightAgainst = weigh(diagnosis, diagnosis.against(), subject, judged, against);
        return Optional.of(new Cause(
                diagnosis.id(),
                subject,
                diagnosis.cause(),
                points,
                against,
                weightFor - weightAgainst,
                diagnosis.settledBy(),
                diagnosis.settle()));
    }

    private int weigh(
            Diagnosis diagnosis, List<Clue> clues, String subject, Map<String, List<Judged>> judged, List<Said> said) {
        int weight = 0;
        for (Clue clue : clues) {
            Word wanted = clue.outcome() == Clue.When.FOUND ? Word.FOUND : Word.IN_ORDER;
            boolean own = rulebook.book().card(clue.card()).about().equals(diagnosis.about());
            boolean counted = false;
            for (Judged one : judged.getOrDefault(clue.card(), List.of())) {
                if (one.word() == wanted && (!own || one.subject().equals(subject))) {
                    said.add(new Said(clue.card(), one.subject(), clue.says()));
                    counted = true;
                }
            }
            weight += counted ? clue.weight() : 0;
        }
        return weight;
    }

    private List<Wanting> wanting(List<Outcome> outcomes, Gate testFiring, Gate release) {
        Set<Ref> holding = new LinkedHashSet<>();
        for (Gate gate : List.of(testFiring, release)) {
            holding.addAll(gate.open());
        }
        Map<Missing, List<Ref>> settles = new TreeMap<>();
        for (Outcome outcome : outcomes) {
            for (Missing missing : outcome.missing()) {
                settles.computeIfAbsent(missing, m -> new ArrayList<>())
                        .add(new Ref(outcome.rule(), outcome.subject()));
            }
        }
        List<Wanting> wanting = new ArrayList<>();
        settles.forEach((missing, refs) ->
                wanting.add(new Wanting(missing, refs, refs.stream().anyMatch(holding::contains))));
        wanting.sort(Comparator.comparing((Wanting one) -> !one.holdsGate())
                .thenComparing(one -> -one.settles().size())
                .thenComparing(Wanting::answer));
        return wanting;
    }
}
