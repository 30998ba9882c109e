/** How curves and geometry are drawn and exported. */
package quoin.curves.draw;
