package gaugeglass.cli.fleet;

/** One of the tables that a fleet comes to. */
public enum FleetTable {
    /** Sites, by their worst standing finding. */
    SITES,
    /** What stands most often. */
    FINDINGS,
    /** What falls due, by quarter. */
    DUE,
    /** What each boiler's make-up comes to beside the others'. */
    MAKE_UP,
    /** What was left open most often. */
    OPEN,
    /** What never found anything. */
    NEVER_FOUND
}
