/** Values, units, reading what people type, display. */
package quoin.quantities;
