/** Pure computation from documents to values, one class per family of the literature. */
@NullMarked
package peakproof.measure;

import org.jspecify.annotations.NullMarked;
