/** The steam-heating trade: what is observed at a low-pressure steam boiler, and the rulebook over it. */
package gaugeglass.steam;
