package gaugeglass.engine.observation;

/** Writes an inspection in the form that the reader takes. */
final class InspectionWriter {
    /** Stands between the parts of an answer of several, as typed. */
    static final String BETWEEN_PARTS = " | ";

    private InspectionWriter() {}
}
