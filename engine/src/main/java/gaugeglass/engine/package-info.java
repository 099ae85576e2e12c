/** Observations in, outcomes and ranked findings out; knows no trade. */
@NullMarked
package gaugeglass.engine;

import org.jspecify.annotations.NullMarked;
