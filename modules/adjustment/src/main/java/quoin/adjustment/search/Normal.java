package quoin.adjustment.search;

/** Standard normal distribution function and its inverse in double precision. */
final class Normal {
    private static final double FAR = 37;
    private static final double SPLIT = 7.07106781186547;
    private static final double SQRT_TWO_PI = 2.506628274631000502;

    private static final double[] HART_P = {3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383,
        112.079291497871, 221.213596169931, 220.206867912376};
    private static final double[] HART_Q = {8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461,
        296.564248779674, 637.333633378831, 793.826512519948, 440.413735824752};

    private static final double[] CENTRE_P = {2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4,
        4.5921953931549871457e4, 1.3731693765509461125e4, 1.9715909503065514427e3, 1.3314166789178437745e2,
        3.3871328727963666080};
    private static final double[] CENTRE_Q = {5.2264952788528545610e3, 2.8729085735721942674e4, 3.9307895800092710610e4,
        2.1213794301586595867e4, 5.3941960214247511077e3, 6.8718700749205790830e2, 4.2313330701600911252e1, 1};
    private static final double[] MIDDLE_P = {7.74545014278341407640e-4, 2.27238449892691845833e-2,
        2.41780725177450611770e-1, 1.27045825245236838258, 3.64784832476320460504, 5.76949722146069140550,
        4.63033784615654529590, 1.42343711074968357734};
    private static final double[] MIDDLE_Q = {1.05075007164441684324e-9, 5.47593808499534494600e-4,
        1.51986665636164571966e-2, 1.48103976427480074590e-1, 6.89767334985100004550e-1, 1.67638483018380384940,
        2.05319162663775882187, 1};
    private static final double[] TAIL_P = {2.01033439929228813265e-7, 2.71155556874348757815e-5,
        1.24266094738807843860e-3, 2.65321895265761230930e-2, 2.96560571828504891230e-1, 1.78482653991729133580,
        5.46378491116411436990, 6.65790464350110377720};
    private static final double[] TAIL_Q = {2.04426310338993978564e-15, 1.42151175831644588870e-7,
        1.84631831751005468180e-5, 7.86869131145613259100e-4, 1.48753612908506148525e-2, 1.36929880922735805310e-1,
        5.99832206555887937690e-1, 1};

    private Normal() {
    }

    /** Probability of a value below x (Hart's rational approximation as given by West, Wilmott magazine, May 2005). */
    static double cumulative(double x) {
        double distance = Math.abs(x);
        double upper;
        if (distance > FAR) {
            upper = 0;
        } else {
            double density = Math.exp(-0.5 * distance * distance);
            if (distance < SPLIT) {
                upper = density * polynomial(HART_P, distance) / polynomial(HART_Q, distance);
            } else {
                double fraction = distance + 0.65;
                for (int i = 4; i >= 1; i--) {
                    fraction = distance + i / fraction;
                }
                upper = density / fraction / SQRT_TWO_PI;
            }
        }
        return x > 0 ? 1 - upper : upper;
    }

    /** Inverse of {@link #cumulative} (Wichura, Algorithm AS 241, PPND16, Applied Statistics 37, 1988). */
    static double quantile(double probability) {
        double q = probability - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q * polynomial(CENTRE_P, r) / polynomial(CENTRE_Q, r);
        }
        double tail = q < 0 ? probability : 1 - probability;
        if (tail <= 0) {
            return q < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        double r = Math.sqrt(-Math.log(tail));
        double x = r <= 5 ? polynomial(MIDDLE_P, r - 1.6) / polynomial(MIDDLE_Q, r - 1.6)
                : polynomial(TAIL_P, r - 5) / polynomial(TAIL_Q, r - 5);
        return q < 0 ? -x : x;
    }

    private static double polynomial(double[] highestFirst, double x) {
        double sum = 0;
        for (double coefficient : highestFirst) {
            sum = sum * x + coefficient;
        }
        return sum;
    }
}
