/** Curves and geometry of an axle against wheel and rack travel. */
package quoin.curves;
