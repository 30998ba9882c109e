package quoin.garage;

/**
 * A car and a title chosen for a new day.
 *
 * @param carId id of the car in the library
 * @param title what the day is called
 */
record CarChoice(String carId, String title) {
}
