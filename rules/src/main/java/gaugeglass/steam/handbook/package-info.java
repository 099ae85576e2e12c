/**
 * The reckonings by name, as a person asks for them: what each wants, in words, and an example of it.
 *
 * <p>Begin with {@link gaugeglass.steam.handbook.Handbook}.
 */
@NullMarked
package gaugeglass.steam.handbook;

import org.jspecify.annotations.NullMarked;
