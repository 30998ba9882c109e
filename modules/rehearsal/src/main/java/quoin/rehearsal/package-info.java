/** The practice car: hidden springs, friction and reading noise behind the same readings. */
package quoin.rehearsal;
