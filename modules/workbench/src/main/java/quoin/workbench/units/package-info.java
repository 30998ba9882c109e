/** How figures are shown: a unit per quantity, the way of writing angles and toe, the decimal mark. */
package quoin.workbench.units;
