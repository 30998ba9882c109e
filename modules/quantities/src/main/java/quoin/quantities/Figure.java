package quoin.quantities;

/**
 * An unsigned number as typed.
 *
 * @param value exactly as typed
 * @param step of its last digit or its fraction
 */
record Figure(Exact value, Exact step) {
}
