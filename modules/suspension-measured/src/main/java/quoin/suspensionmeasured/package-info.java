/** Measured response as a suspension type. */
package quoin.suspensionmeasured;
