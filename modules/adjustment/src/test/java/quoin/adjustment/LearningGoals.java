package quoin.adjustment;

import java.util.List;
import quoin.adjustment.bench.Session;
import quoin.car.Corner;

/** The goals of the simulated cars: cross 50 +-0.2 %, heights +-1 mm, quarter turns. */
final class LearningGoals {

    static final List<Goal> GOALS = List.of(Goal.cross(50, Session.CROSS_TOLERANCE),
            Goal.height(Corner.LF, 0, Session.HEIGHT_TOLERANCE), Goal.height(Corner.RF, 0, Session.HEIGHT_TOLERANCE),
            Goal.height(Corner.LR, 0, Session.HEIGHT_TOLERANCE), Goal.height(Corner.RR, 0, Session.HEIGHT_TOLERANCE));
    static final double[] QUARTERS = {Session.STEP, Session.STEP, Session.STEP, Session.STEP};

    private LearningGoals() {
    }
}
