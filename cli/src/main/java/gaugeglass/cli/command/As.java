package gaugeglass.cli.command;

/** In which form results are printed. */
enum As {
    /** For people. */
    TEXT,
    /** One JSON text. */
    JSON,
    /** One JSON text on each line, one line for each inspection. */
    JSONL
}
