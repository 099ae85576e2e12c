/** Observations in, outcomes and ranked findings out; knows no trade. */
package gaugeglass.engine;
