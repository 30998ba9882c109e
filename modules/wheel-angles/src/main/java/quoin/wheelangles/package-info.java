/** Camber, caster and toe. */
package quoin.wheelangles;
