/** Before the first turn: load case, bars, dampers, steering, pads, scales. */
package quoin.preparation;
