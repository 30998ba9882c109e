/** Pages of texts and lines in mm, and the three ways they come out: PDF, print, picture. */
package quoin.setupsheet.page;
