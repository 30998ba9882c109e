/** The numbers behind learning: response of the body, least squares, posterior over car and noise. Arrays only. */
package quoin.adjustment.learn;
