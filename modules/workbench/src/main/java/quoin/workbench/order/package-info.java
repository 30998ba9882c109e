/** The window with the order of work and the one next thing. */
package quoin.workbench.order;
