/** Light or dark, as the racer chooses or as the system stands. */
package quoin.workbench.theme;
