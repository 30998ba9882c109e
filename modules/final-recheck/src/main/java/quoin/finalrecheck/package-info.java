/** Everything again, beside the signed figures. */
package quoin.finalrecheck;
