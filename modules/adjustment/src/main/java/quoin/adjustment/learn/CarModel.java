package quoin.adjustment.learn;

/**
 * The car as the estimator sees it.
 *
 * @param springs geometry and tyres
 * @param rate believed wheel rates, N/mm
 * @param rateSd their relative standard deviations
 * @param bar bar rates front and rear, N/mm
 * @param corner corner of each adjuster
 * @param lift believed lift of each adjuster, mm per turn
 * @param group lift group of each adjuster, 0 .. groupSd.length - 1
 * @param groupSd relative standard deviation of each group's lift
 * @param correction what exact mechanics adds to the linear response per turn, 8 rows, a column per adjuster
 */
public record CarModel(FourSprings springs, double[] rate, double[] rateSd, double[] bar, int[] corner, double[] lift,
        int[] group, double[] groupSd, double[][] correction) {

    /** First lift parameter. */
    static final int LIFT = 4;

    /** Builds the model; place arrays are mm, order LF RF LR RR. */
    public static CarModel of(double[][] wheelPlaces, double[][] heightPlaces, double[] tyre, double[] rate,
            double[] rateSd, double[] bar, int[] corner, double[] lift, int[] group, double[] groupSd,
            double[][] exactPerTurn) {
        FourSprings springs = new FourSprings(column(wheelPlaces, 0), column(wheelPlaces, 1), column(heightPlaces, 0),
                column(heightPlaces, 1), tyre);
        double[][] correction = new double[8][corner.length];
        if (exactPerTurn.length > 0) {
            double[][] linear = springs.response(rate, bar);
            for (int i = 0; i < 8; i++) {
                for (int a = 0; a < corner.length; a++) {
                    correction[i][a] = exactPerTurn[i][a] - linear[i][corner[a]] * lift[a];
                }
            }
        }
        return new CarModel(springs, rate, rateSd, bar, corner, lift, group, groupSd, correction);
    }

    int loadAt() {
        return LIFT + groupSd.length;
    }

    int heightAt() {
        return loadAt() + 4;
    }

    int parameters() {
        return heightAt() + 3;
    }

    int adjusters() {
        return corner.length;
    }

    /** Wheel rates at the parameters: the believed rate times exp of the first four. */
    double[] rates(double[] p) {
        double[] k = new double[4];
        for (int i = 0; i < 4; i++) {
            k[i] = rate[i] * Math.exp(p[i]);
        }
        return k;
    }

    /** Corner offsets, mm, made by the turns. */
    double[] offsets(double[] p, double[] turns) {
        double[] e = new double[4];
        for (int a = 0; a < turns.length; a++) {
            e[corner[a]] += lift[a] * Math.exp(p[LIFT + group[a]]) * turns[a];
        }
        return e;
    }

    /** Readings per turn of each adjuster, 8 rows. */
    double[][] perTurn(double[] p, double[][] response) {
        double[][] out = new double[8][adjusters()];
        for (int a = 0; a < adjusters(); a++) {
            double mm = lift[a] * Math.exp(p[LIFT + group[a]]);
            for (int i = 0; i < 8; i++) {
                out[i][a] = response[i][corner[a]] * mm + correction[i][a];
            }
        }
        return out;
    }

    /** The as-found readings in the load case of the targets at the parameters. */
    double[] asFound(double[] p) {
        double[] out = new double[8];
        int h = heightAt();
        for (int i = 0; i < 4; i++) {
            out[i] = p[loadAt() + i];
            out[4 + i] = p[h] + p[h + 1] * springs.heightX()[i] / 1000 + p[h + 2] * springs.heightY()[i] / 1000;
        }
        return out;
    }

    private static double[] column(double[][] rows, int c) {
        double[] out = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            out[i] = rows[i][c];
        }
        return out;
    }
}
