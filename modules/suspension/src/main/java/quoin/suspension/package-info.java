/**
 * What a suspension type is: its parameters, the position of one wheel against wheel and rack travel, and what its
 * adjusters do. Axes: ISO 8855, x forward, y left, z up; mm and deg.
 */
package quoin.suspension;
