/**
 * Many visits to many sites, counted together. {@link gaugeglass.cli.fleet.Fleet} is where to start: it takes one
 * {@link gaugeglass.cli.fleet.Summary} after another and keeps little of each.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.fleet;
