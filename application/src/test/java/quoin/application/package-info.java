/**
 * Tests of Quoin as a whole: the architecture, and the assembled application driven by real keys in a real window.
 */
package quoin.application;
