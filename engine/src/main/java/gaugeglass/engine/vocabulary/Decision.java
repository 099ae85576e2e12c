package gaugeglass.engine.vocabulary;

/** What an owner decided about a finding. */
public enum Decision {
    /** Nothing is known of a decision. */
    NONE,
    /** The work was ordered and is said to be done. */
    DONE,
    /** Put off to a later time. */
    DEFERRED,
    /** Not to be done. */
    REFUSED
}
