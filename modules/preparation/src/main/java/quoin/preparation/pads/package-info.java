/** Pads surveyed, shimmed and remembered. */
package quoin.preparation.pads;
