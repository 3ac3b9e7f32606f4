/** Earlier versions of files, by way of the program git; nothing here knows of plans. */
@NullMarked
package peakproof.git;

import org.jspecify.annotations.NullMarked;
