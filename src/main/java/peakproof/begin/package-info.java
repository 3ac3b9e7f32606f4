/** Starts files: what to ask of a coach, and the text that comes of the answers. */
@NullMarked
package peakproof.begin;

import org.jspecify.annotations.NullMarked;
