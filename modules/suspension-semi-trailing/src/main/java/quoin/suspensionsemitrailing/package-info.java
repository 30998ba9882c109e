/** Semi-trailing arm as a suspension type. */
package quoin.suspensionsemitrailing;
