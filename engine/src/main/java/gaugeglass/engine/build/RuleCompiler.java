package gaugeglass.engine.build;

import gaugeglass.engine.pack.ByteLoader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.internal.builder.InternalKieBuilder;

/** Compiles rule texts into the classes of Drools' executable model. */
public final class RuleCompiler {
    private static final String MODEL_LIST = "META-INF/kie/";

    private RuleCompiler() {}

    /**
     * What compiling gave.
     *
     * @param classes class files by path
     * @param models the names of the model classes
     */
    public record Compiled(Map<String, byte[]> classes, List<String> models) {
        /** A loader that knows these classes besides its parent's, and before them. */
        public ClassLoader loader(ClassLoader parent) {
            return new ByteLoader(classes, parent);
        }
    }

    /**
     * The first line of every compiled file: package and imports. Rule files carry none of their own, so that a rule
     * can name observations and nothing else; being one line, it leaves the line numbers as they were.
     */
    public static String header(String rulePackage, Vocabulary vocabulary) {
        TreeSet<String> imports = new TreeSet<>();
        for (ItemType item : vocabulary.items()) {
            String name = item.className();
            int nested = name.indexOf('$');
            imports.add(nested < 0 ? name : name.substring(0, nested) + ".*");
            item.components().forEach(component -> {
                String type = component.type();
                if (!type.isEmpty()) {
                    int inner = type.indexOf('$');
                    imports.add(inner < 0 ? type : type.substring(0, inner) + ".*");
                }
            });
        }
        imports.add("gaugeglass.engine.facts.Visit");
        imports.add("gaugeglass.engine.facts.Fitted");
        imports.add("gaugeglass.engine.book.Limit");
        StringBuilder header = new StringBuilder("package ").append(rulePackage).append("; ");
        imports.forEach(name -> header.append("import ").append(name).append("; "));
        return header.toString();
    }

    /**
     * Compiles.
     *
     * @param rulePackage the package of the generated classes; no two rulebooks in one program may share it
     * @param texts rule files by name, without header
     * @param mistakes takes what the compiler finds
     */
    public static Compiled compile(
            String rulePackage, Vocabulary vocabulary, Map<String, String> texts, List<Mistake> mistakes) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        ReleaseId release = services.newReleaseId("gaugeglass.compiled", rulePackage, "1");
        files.generateAndWritePomXML(release);
        String header = header(rulePackage, vocabulary);
        String folder = "src/main/resources/" + rulePackage.replace('.', '/') + "/";
        texts.forEach((name, text) -> files.write(folder + name, header + text));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
            String path = String.valueOf(message.getPath());
            mistakes.add(new Mistake(
                    path.substring(path.lastIndexOf('/') + 1),
                    Math.max(0, message.getLine()),
                    0,
                    "",
                    "the rule does not compile: " + message.getText().replace('\n', ' '),
                    "",
                    ""));
        }
        Map<String, byte[]> classes = new TreeMap<>();
        List<String> models = new ArrayList<>();
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            return new Compiled(classes, models);
        }
        InternalKieModule module = (InternalKieModule) ((InternalKieBuilder) builder).getKieModuleIgnoringErrors();
        for (String name : module.getFileNames()) {
            if (name.endsWith(".class") && !name.contains("/project/model/")) {
                classes.put(name, module.getBytes(name));
            } else if (name.startsWith(MODEL_LIST) && name.endsWith("/drools-model")) {
                new String(module.getBytes(name), StandardCharsets.UTF_8)
                        .lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty() && !line.startsWith("Drools-Model-Version"))
                        .forEach(models::add);
            }
        }
        services.getRepository().removeKieModule(release);
        return new Compiled(classes, models);
    }
}
