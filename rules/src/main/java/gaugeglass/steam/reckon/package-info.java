/**
 * The reckonings a technician does at the equipment, as pure functions of quantities.
 *
 * <p>What is exact stays exact. What comes from a steam table is a double, and is rounded to the resolution its docstring
 * states before it becomes a quantity, so that no verdict hangs on a digit the table does not have. Each function refuses
 * what lies outside its range with an {@link IllegalArgumentException}.
 */
@NullMarked
package gaugeglass.steam.reckon;

import org.jspecify.annotations.NullMarked;
