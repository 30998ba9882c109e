/** Beside the stages: what the car is set to, what a change of mass would do, where ballast goes, the centre of gravity. */
package quoin.ballast;
