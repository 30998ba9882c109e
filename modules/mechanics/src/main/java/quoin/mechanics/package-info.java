/** Corner loads, sensitivities, centre of gravity, pads, uncertainty: pure functions. */
package quoin.mechanics;
