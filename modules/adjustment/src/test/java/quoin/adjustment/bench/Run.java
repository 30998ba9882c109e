package quoin.adjustment.bench;

/**
 * How one strategy ended on one car.
 *
 * @param rounds rounds until it stopped; more than the limit when it never did
 * @param inside whether the friction-free car was inside every tolerance then
 * @param claimed probability claimed at the stop; negative when the strategy claims none
 * @param extras extra readings beyond one a round
 */
record Run(int rounds, boolean inside, double claimed, int extras) {

    static final int LIMIT = 30;

    boolean stopped() {
        return rounds <= LIMIT;
    }
}
