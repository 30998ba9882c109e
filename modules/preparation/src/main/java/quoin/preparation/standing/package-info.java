/** The car as it stands on its pads. */
package quoin.preparation.standing;
