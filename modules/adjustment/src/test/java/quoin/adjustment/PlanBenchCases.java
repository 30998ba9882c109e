package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Problems of the size of a real set-up day, for measuring time and for comparing with a general-purpose solver. */
final class PlanBenchCases {
    private static final String[] CORNERS = {"LF", "RF", "LR", "RR"};

    private PlanBenchCases() {
    }

    /** How the sensitivities of a problem come about. */
    enum Kind {
        /** The contract example's car, each sensitivity varied by some 10 %. */
        CAR,
        /** As CAR, with the last adjuster nearly a combination of the others. */
        NEARLY_SINGULAR,
        /** Perch and pushrod at each corner: they do almost the same, and share the visit. */
        PERCH_AND_ROD,
        /** Perches for weight and heights, toe links for four toes that the perches disturb a little; a visit each. */
        PERCH_AND_TOE_LINK,
        /** Nothing but chance. */
        CHANCE
    }

    /** Four adjusters, one at each corner; cross weight and four heights. */
    static StepProblem four(Random random, Kind kind, double stepTurns, double rangeTurns) {
        double[][] sensitivity = car(random);
        if (kind == Kind.NEARLY_SINGULAR) {
            double[] share = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            for (double[] row : sensitivity) {
                row[3] = share[0] * row[0] + share[1] * row[1] + share[2] * row[2] + 1e-4 * random.nextGaussian();
            }
        }
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (String corner : CORNERS) {
            adjusters.add(StepAdjuster.stepping("perch" + corner, corner, stepTurns, -rangeTurns, rangeTurns));
        }
        return new StepProblem(carErrors(random), new double[] {0.2, 1, 1, 1, 1}, sensitivity, adjusters, 1, 0.001);
    }

    /** Eight adjusters and eight readings. */
    static StepProblem eight(Random random, Kind kind, double stepTurns, double rangeTurns) {
        double[][] sensitivity = new double[8][8];
        double[] errors = new double[8];
        double[] tolerances = {0.2, 1, 1, 1, 1, 0.3, 0.3, 0.5};
        System.arraycopy(carErrors(random), 0, errors, 0, 5);
        double[][] car = car(random);
        double[][] second = car(random);
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                sensitivity[i][j] = switch (kind) {
                    case PERCH_AND_ROD, NEARLY_SINGULAR -> i >= 5 ? 0.05 * random.nextGaussian()
                            : j < 4 ? car[i][j] : kind == Kind.NEARLY_SINGULAR ? 1.3 * car[i][j - 4]
                            : 0.7 * car[i][j - 4] + 0.6 * second[i][j - 4];
                    case PERCH_AND_TOE_LINK -> i < 4 && j < 4 ? car[i][j] : i < 4 ? 0
                            : j < 4 ? 0.02 * random.nextGaussian() : i - 4 == j - 4 ? 0.6 + 0.05 * random.nextGaussian() : 0;
                    default -> random.nextGaussian();
                };
            }
            if (i >= 5 || kind == Kind.PERCH_AND_TOE_LINK && i == 4) {
                errors[i] = random.nextGaussian();
            }
        }
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (int j = 0; j < 8; j++) {
            boolean shared = kind == Kind.PERCH_AND_ROD || kind == Kind.NEARLY_SINGULAR;
            String visit = CORNERS[j % 4] + (j < 4 || shared ? "" : "link");
            adjusters.add(StepAdjuster.stepping("adjuster" + j, visit, stepTurns, -rangeTurns, rangeTurns));
        }
        return new StepProblem(errors, tolerances, sensitivity, adjusters, 1, 0.001);
    }

    private static double[] carErrors(Random random) {
        double[] errors = new double[5];
        errors[0] = 1.5 * random.nextGaussian();
        for (int i = 1; i < 5; i++) {
            errors[i] = 4 * random.nextGaussian();
        }
        return errors;
    }

    private static double[][] car(Random random) {
        double[][] sensitivity = PlanCases.contractExample().sensitivityPerTurn();
        for (double[] row : sensitivity) {
            for (int j = 0; j < 4; j++) {
                row[j] *= 1 + 0.1 * random.nextGaussian();
            }
        }
        return sensitivity;
    }
}
