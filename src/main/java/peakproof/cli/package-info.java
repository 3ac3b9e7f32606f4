/** One class per command. */
@NullMarked
package peakproof.cli;

import org.jspecify.annotations.NullMarked;
