/** Ways of measuring wheel angles: what is typed, what follows from it and how good it is; draws nothing. */
package quoin.wheelangles.measure;
