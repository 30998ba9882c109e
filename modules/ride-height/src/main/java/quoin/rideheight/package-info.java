/** Heights, rake and frame flatness. */
package quoin.rideheight;
