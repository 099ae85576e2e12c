package gaugeglass.steam.proof;

import gaugeglass.engine.facts.Facts;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Plain Drools sessions over compiled rules, for rules that are in no index. */
final class Sessions {
    private final KieBase base;

    private Sessions(KieBase base) {
        this.base = base;
    }

    /** The rules of compiled models, by name. */
    static Map<String, Rule> rules(Collection<String> models, ClassLoader loader) {
        Map<String, Rule> rules = new HashMap<>();
        for (String name : models) {
            try {
                Model model = (Model) Class.forName(name, true, loader)
                        .getDeclaredConstructor()
                        .newInstance();
                model.getRules().forEach(rule -> rules.put(rule.getName(), rule));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return rules;
    }

    static Sessions of(Collection<Rule> rules) {
        ModelImpl model = new ModelImpl();
        rules.forEach(model::addRule);
        return new Sessions(
                KieBaseBuilder.createKieBaseFromModel(List.of(model), RuleBaseFactory.newKnowledgeBaseConfiguration()));
    }

    /** The subjects that each rule matches, by the rule's name; a rule about the whole has the subject "". */
    Map<String, Set<String>> matches(Facts facts) {
        Map<String, Set<String>> matches = new HashMap<>();
        KieSession session = base.newKieSession();
        try {
            facts.tables()
                    .forEach(table -> table.all().forEach(slot -> slot.fact().ifPresent(session::insert)));
            session.fireAllRules(match -> {
                String subject = match.getDeclarationIds().contains("$about")
                        ? (String) match.getDeclarationValue("$about")
                        : "";
                matches.computeIfAbsent(match.getRule().getName(), name -> new HashSet<>())
                        .add(subject);
                return false;
            });
        } finally {
            session.dispose();
        }
        return matches;
    }
}
