package gaugeglass.cli;

/** The entry of the command line, until the commands exist: tells its version. */
public final class Main {
    private Main() {}

    /**
     * Prints the version when asked with {@code --version}; any other command line is wrong.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        if (args.length == 1 && args[0].equals("--version")) {
            String version = Main.class.getPackage().getImplementationVersion();
            System.out.println("gaugeglass " + (version == null ? "unpackaged" : version));
            return;
        }
        System.err.println("gaugeglass: there are no commands yet; only --version");
        System.exit(2);
    }
}
