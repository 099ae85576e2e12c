/** Words for people: names of constants, nearest known words, and mistakes with their place. */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.text;
