package gaugeglass.cli.command;

/** Prints the schema of a kind of file. */
final class SchemaCommand {
    private SchemaCommand() {}

    static String text(String name, Shell shell) {
        String path = "gaugeglass/schema/" + name + ".schema.json";
        return shell.resource(path).orElseThrow(() -> new IllegalStateException("there is no " + path));
    }
}
