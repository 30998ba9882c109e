/** How every figure of a stage is computed: the formula, the numbers put in, the result. */
package quoin.workings;
