/** The curves of an axle, without a window. */
package quoin.curves.set;
