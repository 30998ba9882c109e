/** The car as immutable records: corners, adjusters, height points, targets, load case. */
package quoin.car;
