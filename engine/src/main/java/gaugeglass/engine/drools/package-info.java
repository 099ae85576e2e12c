/**
 * The two judges. Drools finds what is found; a three-valued reading of the same compiled
 * conditions tells what is ruled out and what is open. The only package that touches Drools when
 * rules run.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.drools;
