package gaugeglass.engine.drools;

import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Slot;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;

/** The first judge: a Drools session over the facts that are known. */
final class SessionJudge implements FirstJudge {
    private final KieBase base;
    private final Set<Class<?>> wanted;

    SessionJudge(List<Model> models) {
        this.base = KieBaseBuilder.createKieBaseFromModel(models, RuleBaseFactory.newKnowledgeBaseConfiguration());
        this.wanted = new HashSet<>();
        for (Model model : models) {
            for (Rule rule : model.getRules()) {
                Program.patterns(rule)
                        .forEach(pattern ->
                                wanted.add(pattern.getPatternVariable().getType()));
            }
        }
    }

    @Override
    public void matches(Facts facts, Map<String, List<Evidence>> matches) {
        KieSession session = base.newKieSession();
        try {
            for (Class<?> type : wanted) {
                for (Slot slot : facts.table(type).all()) {
                    slot.fact().ifPresent(session::insert);
                }
            }
            // The match is the finding: refusing it here means that no consequence ever runs.
            session.fireAllRules(match -> {
                matches.computeIfAbsent(match.getRule().getName(), name -> new ArrayList<>())
                        .add(evidence(match));
                return false;
            });
        } finally {
            session.dispose();
        }
    }

    /** Runs a session over one fact, for the sake of what the engine makes ready at its first run. */
    void tryOut(Object fact) {
        KieSession session = base.newKieSession();
        try {
            session.insert(fact);
            session.fireAllRules(match -> false);
        } finally {
            session.dispose();
        }
    }

    private static Evidence evidence(Match match) {
        Map<String, Object> bound = new LinkedHashMap<>();
        for (String id : match.getDeclarationIds()) {
            // The rule's own variables begin with a dollar sign; the rest are made by the compiler.
            if (id.startsWith("$")) {
                bound.put(id.substring(1), match.getDeclarationValue(id));
            }
        }
        return new Evidence(List.copyOf(match.getObjects()), bound);
    }
}
