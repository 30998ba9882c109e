/** Double wishbone as a suspension type. */
package quoin.suspensiondoublewishbone;
