/** Two states of a car side by side, of one day or of two, and the history of a car over all its days. */
package quoin.comparison;
