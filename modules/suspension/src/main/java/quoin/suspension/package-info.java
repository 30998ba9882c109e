/** What a suspension type is: id, parameters, adjusters. */
package quoin.suspension;
