/** Strut as a suspension type. */
package quoin.suspensionstrut;
