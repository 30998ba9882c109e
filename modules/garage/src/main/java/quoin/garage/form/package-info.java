/** The window of the car form. */
package quoin.garage.form;
