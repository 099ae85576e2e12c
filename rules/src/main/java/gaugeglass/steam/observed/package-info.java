/**
 * The observations of the steam trade: one holder for a subject, one small record for each thing that can be seen.
 *
 * <p>Rules name these records and their choices; the record components are the words a rule uses.
 */
package gaugeglass.steam.observed;
