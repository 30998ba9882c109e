package quoin.adjustment.bench;

import quoin.adjustment.SettledReading;

/** The two strategies without a model of the car: our own caricatures of habits. They stop on the readings. */
final class HandStrategies {

    private HandStrategies() {
    }

    /**
     * One turn on the front axle of the heavy diagonal (down there, up on the other side), then half whenever the sign
     * of the error changes; once cross reads inside, every corner out of height is turned by its own error.
     */
    static Run ruleOfThumb(Session session) {
        double[] r = values(session.read(true));
        double size = 1;
        double before = 0;
        for (int round = 1; round <= Run.LIMIT; round++) {
            double error = Session.cross(r) - 50;
            int[] steps = new int[4];
            if (Math.abs(error) > Session.CROSS_TOLERANCE) {
                if (before * error < 0) {
                    size = Math.max(Session.STEP, size / 2);
                }
                before = error;
                int quarters = Math.max(1, (int) Math.round(size / Session.STEP));
                steps[1] = error > 0 ? -quarters : quarters;
                steps[0] = -steps[1];
            } else {
                for (int i = 0; i < 4; i++) {
                    if (Math.abs(r[4 + i]) > Session.HEIGHT_TOLERANCE) {
                        steps[i] = quarters(session, i, -r[4 + i]);
                    }
                }
                size = Math.max(size, 2 * Session.STEP);
                before = 0;
            }
            session.turn(steps);
            r = values(session.read(true));
            if (Session.inside(r)) {
                return new Run(round, session.trulyInside(), -1, 0);
            }
        }
        return never(session);
    }

    /**
     * Heights first, all four by their own errors, until they read inside; then the same turn at all four for cross, up
     * on the light diagonal and down on the heavy one, sized by the answer to the last such move.
     */
    static Run skilledByHand(Session session) {
        double[] r = values(session.read(true));
        double percentPerTurn = 2.3;
        for (int round = 1; round <= Run.LIMIT; round++) {
            double error = Session.cross(r) - 50;
            int[] steps = new int[4];
            boolean heights = false;
            for (int i = 0; i < 4; i++) {
                heights |= Math.abs(r[4 + i]) > Session.HEIGHT_TOLERANCE;
            }
            int cross = 0;
            if (heights) {
                for (int i = 0; i < 4; i++) {
                    steps[i] = quarters(session, i, -r[4 + i]);
                }
            }
            if (Math.abs(error) > Session.CROSS_TOLERANCE) {
                cross = (int) Math.round(-error / percentPerTurn / Session.STEP);
                cross = cross == 0 ? (error > 0 ? -1 : 1) : cross;
                for (int i = 0; i < 4; i++) {
                    steps[i] += i == 1 || i == 2 ? cross : -cross;
                }
            }
            session.turn(steps);
            double[] next = values(session.read(true));
            if (Session.inside(next)) {
                return new Run(round, session.trulyInside(), -1, 0);
            }
            double answer = (Session.cross(next) - Session.cross(r)) / (cross * Session.STEP);
            if (!heights && Math.abs(cross) >= 2 && answer > 0.5 && answer < 8) {
                percentPerTurn = answer;
            }
            r = next;
        }
        return never(session);
    }

    private static int quarters(Session session, int corner, double mm) {
        int q = (int) Math.round(mm / session.car().assumedLift[corner] / Session.STEP);
        return q == 0 && Math.abs(mm) > Session.HEIGHT_TOLERANCE ? (int) Math.signum(mm) : q;
    }

    static Run never(Session session) {
        return new Run(Run.LIMIT + 1, session.trulyInside(), -1, 0);
    }

    static double[] values(SettledReading reading) {
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            out[i] = reading.loadsN().get(i).getAsDouble();
            out[4 + i] = reading.heightsMm().get(i).getAsDouble();
        }
        return out;
    }
}
