/** What people do with packs: lay them on, make, check and try them, sign and pass them on. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.pack;
