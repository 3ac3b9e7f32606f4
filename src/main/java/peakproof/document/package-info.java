/** The club's YAML documents: read with positions, refused with faults in plain words. */
@NullMarked
package peakproof.document;

import org.jspecify.annotations.NullMarked;
