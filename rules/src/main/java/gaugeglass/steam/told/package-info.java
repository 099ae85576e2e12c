/** What the findings of earlier visits tell of this one, where an inspection holds them. */
@NullMarked
package gaugeglass.steam.told;

import org.jspecify.annotations.NullMarked;
