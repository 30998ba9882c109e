/** Forms of the preparation: typed figures, pages. */
package quoin.preparation.sheet;
