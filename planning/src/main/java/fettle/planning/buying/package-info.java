/**
 * What is to be bought for changes: standard designations, quantities and the owner's prices, and
 * what each change costs; nothing is linked to a seller.
 */
@NullMarked
package fettle.planning.buying;

import org.jspecify.annotations.NullMarked;
