/** Five-link as a suspension type. */
package quoin.suspensionfivelink;
