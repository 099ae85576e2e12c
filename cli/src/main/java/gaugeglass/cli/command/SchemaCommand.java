package gaugeglass.cli.command;

import gaugeglass.engine.observation.InspectionSchema;

/** Prints the schema of a kind of file. */
final class SchemaCommand {
    private SchemaCommand() {}

    static String text(String name, Shell shell) {
        if (name.equals("inspection")) {
            return InspectionSchema.of(shell.vocabulary());
        }
        String path = "gaugeglass/schema/" + name + ".schema.json";
        return shell.resource(path).orElseThrow(() -> new IllegalStateException("there is no " + path));
    }
}
