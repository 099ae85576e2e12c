package gaugeglass.engine.reading;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Plain words for what a parser of YAML or JSON stumbled over, and where. */
record SyntaxWords(int line, int column, String what, String expected) {

    private static final String INDENTATION =
            "the keys of one group in the same column, and what belongs to a key further in";

    private static final String A_KEY = "a key, a colon and a space";

    static SyntaxWords yaml(MarkedYAMLException e, String text) {
        Mark problemMark = e.getProblemMark();
        Mark contextMark = e.getContextMark();
        String problem = e.getProblem() == null ? "" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext();
        if (problemMark == null) {
            return new SyntaxWords(0, 0, "this is not YAML: " + firstLine(e.getMessage()), "");
        }
        String line = line(text, problemMark.getLine());
        if (isTabIndented(line) || problem.contains("(TAB)")) {
            return at(problemMark, "a tab indents this line; use spaces", "");
        }
        if (context.contains("quoted scalar") && contextMark != null) {
            return at(contextMark, "a quote opens here and is not closed", "the same quote at the end of the value");
        }
        if (problem.contains("could not find expected ':'") && contextMark != null) {
            return at(contextMark, "there is no colon followed by a space on this line", A_KEY);
        }
        if (line.stripLeading().startsWith(":")) {
            return at(problemMark, "there is no key before the colon", "one word and a colon");
        }
        if (problem.contains("mapping values are not allowed")) {
            // A line without a colon is taken together with the next, where the parser then stumbles.
            int before = problemMark.getLine() - 1;
            String previous = before < 0 ? "" : line(text, before);
            if (isFirstColon(line, problemMark.getColumn()) && isPlainText(previous)) {
                int column = previous.length() - previous.stripLeading().length() + 1;
                return new SyntaxWords(before + 1, column, "there is no colon followed by a space on this line", A_KEY);
            }
            return isFirstColon(line, problemMark.getColumn())
                    ? at(problemMark, "this line is indented further than its neighbours", INDENTATION)
                    : at(
                            problemMark,
                            "a second colon on this line",
                            "one key on a line; a value that holds a colon and a space stands in straight quotes");
        }
        if (problem.contains("cannot start any token")) {
            String what = problemMark.getColumn() < line.length()
                    ? "a value cannot begin with "
                            + new String(Character.toChars(
                                    line.codePointAt(line.offsetByCodePoints(0, problemMark.getColumn()))))
                    : "a value cannot begin here";
            return at(problemMark, what, "the value in quotes");
        }
        if (problem.contains("sequence entries are not allowed")) {
            return at(
                    problemMark, "a dash begins a list where a value has begun", "the list on the lines below the key");
        }
        if (context.contains("flow") && contextMark != null && problem.contains("expected ',' or")) {
            return at(contextMark, "a bracket or brace opens here and is not closed", "its partner at the end");
        }
        if (problem.contains("expected <block end>")) {
            return problem.contains("<scalar>") && isInsideLine(line, problemMark.getColumn())
                    ? at(problemMark, "something follows the closing quote", "the whole value in one pair of quotes")
                    : at(problemMark, "this line is indented differently from its neighbours", INDENTATION);
        }
        return at(problemMark, "this is not YAML: " + firstLine((context + " " + problem).strip()), "");
    }

    /** What the JSON parser said, without its advice for programmers. */
    static String json(String message) {
        String text = message == null ? "" : message;
        if (text.contains("'\u201C'") || text.contains("'\u201D'")) {
            return "a curly quote stands where a straight one belongs";
        }
        if (text.contains("double-quote to start field name")) {
            return text.contains("'}'") ? "a comma too many before a closing brace" : "a key without double quotes";
        }
        if (text.contains("comma to separate")) {
            return "a comma is missing before this";
        }
        if (text.contains("colon to separate field name")) {
            return "a colon is missing after a key";
        }
        if (text.contains("Illegal unquoted character")) {
            return "a line break or control character stands inside quotes";
        }
        if (text.contains("Unrecognized token")) {
            return "a value without double quotes";
        }
        if (text.contains("']'")) {
            return "a comma too many before a closing bracket";
        }
        return firstLine(message);
    }

    static String firstLine(String text) {
        if (text == null) {
            return "no more is known";
        }
        int end = text.indexOf('\n');
        return Node.shortened((end < 0 ? text : text.substring(0, end)).strip());
    }

    private static SyntaxWords at(Mark mark, String what, String expected) {
        return new SyntaxWords(mark.getLine() + 1, mark.getColumn() + 1, what, expected);
    }

    /** One line, counted from 0. */
    private static String line(String text, int number) {
        int start = 0;
        for (int line = 0; line < number; line++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                break;
            }
            start = end + 1;
        }
        int end = text.indexOf('\n', start);
        return end < 0 ? text.substring(start) : text.substring(start, end);
    }

    private static boolean isTabIndented(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '\t') {
                return true;
            }
            if (c != ' ' && c != '-') {
                return false;
            }
        }
        return false;
    }

    private static boolean isPlainText(String line) {
        String text = line.strip();
        return !text.isEmpty()
                && !text.startsWith("#")
                && !text.startsWith("-")
                && !text.endsWith(":")
                && !text.contains(": ");
    }

    private static boolean isFirstColon(String line, int column) {
        int colon = line.indexOf(": ");
        if (colon < 0) {
            colon = line.stripTrailing().length() - 1;
        }
        return line.codePointCount(0, Math.max(0, colon)) >= column;
    }

    private static boolean isInsideLine(String line, int column) {
        return !line.substring(0, Math.min(column, line.length())).isBlank();
    }
}
