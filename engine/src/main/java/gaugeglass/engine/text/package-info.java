/** Small helpers for reading and answering what people type. */
@NullMarked
package gaugeglass.engine.text;

import org.jspecify.annotations.NullMarked;
