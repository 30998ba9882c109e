/** Live axle as a suspension type. */
package quoin.suspensionliveaxle;
