package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Planning problems for the tests. */
final class PlanCases {
    private static final double[][] CONTRACT_SENSITIVITY = {
        {-0.265081968768, 0.265079467877, 0.160259042713, -0.160259556884},
        {1.2765043069, 0.677383967392, 0.258181121773, -0.106824509436},
        {0.677330644926, 1.27639444135, -0.106848831238, 0.258123241608},
        {0.410444363613, -0.188658195656, 0.761758395392, 0.396762736767},
        {-0.188729298365, 0.410352278301, 0.396728442381, 0.761710487811}};
    private static final String[] CORNERS = {"LF", "RF", "LR", "RR"};

    private PlanCases() {
    }

    /** Contract example, worked out by an independent program: cross weight and four heights, perches and pushrods. */
    static StepProblem contractExample() {
        return fourByFive(new double[] {1.83279155343, 0.825410244076, 0.0664087905811, -5.46720567816, -6.22620713165},
                0.25, 6);
    }

    /** The contract example's car with other errors, steps and ranges. */
    static StepProblem fourByFive(double[] errors, double stepTurns, double rangeTurns) {
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (String corner : CORNERS) {
            adjusters.add(StepAdjuster.stepping("adjuster" + corner, corner, stepTurns, -rangeTurns, rangeTurns));
        }
        return new StepProblem(errors, new double[] {0.2, 1, 1, 1, 1}, CONTRACT_SENSITIVITY, adjusters, 1, 0.001);
    }

    /** Many adjusters on three readings, no prices: countless plans that are almost equally good. */
    static StepProblem denseLattice(int n) {
        Random random = new Random(1);
        double[][] sensitivity = new double[3][n];
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            adjusters.add(StepAdjuster.stepping("a" + j, CORNERS[j % 4], 0.125, -10, 10));
            for (double[] row : sensitivity) {
                row[j] = random.nextGaussian();
            }
        }
        return new StepProblem(new double[] {3, -2, 5}, new double[] {1, 1, 1}, sensitivity, adjusters, 0, 0);
    }

    /** A small problem of any kind: few or many readings, stocks, locks, shared visits, singular matrices, no prices. */
    static StepProblem random(Random random) {
        int rows = random.nextInt(6);
        int n = 1 + random.nextInt(5);
        int visits = 1 + random.nextInt(n);
        int most = n == 5 ? 4 : n == 4 ? 6 : 11;
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            adjusters.add(adjuster(random, "a" + j, "v" + random.nextInt(visits), most));
        }
        double[][] sensitivity = new double[rows][n];
        double[] errors = new double[rows];
        double[] tolerances = new double[rows];
        int kind = random.nextInt(4);
        for (int i = 0; i < rows; i++) {
            errors[i] = 3 * random.nextGaussian();
            tolerances[i] = Math.exp(random.nextGaussian());
            for (int j = 0; j < n; j++) {
                sensitivity[i][j] = kind == 3 ? random.nextInt(3) - 1 : random.nextGaussian();
            }
            if (kind == 1 && i > 0) {
                double factor = random.nextGaussian();
                for (int j = 0; j < n; j++) {
                    sensitivity[i][j] = factor * sensitivity[0][j] + 1e-7 * random.nextGaussian();
                }
            } else if (kind == 2 && n > 1) {
                sensitivity[i][1] = -0.5 * sensitivity[i][0];
            }
        }
        double[] visitPrices = {0, 0.3, 1, 5};
        double[] turnPrices = {0, 0.001, 0.1};
        return new StepProblem(errors, tolerances, sensitivity, adjusters, visitPrices[random.nextInt(4)],
                turnPrices[random.nextInt(3)]);
    }

    private static StepAdjuster adjuster(Random random, String id, String visit, int most) {
        switch (random.nextInt(6)) {
            case 0:
                return StepAdjuster.locked(id, visit);
            case 1:
                double[] stock = random.doubles(random.nextInt(most), -4, 4).toArray();
                return StepAdjuster.fromStock(id, visit, stock).withEffort(random.nextDouble());
            case 2:
                double[] forced = random.doubles(1 + random.nextInt(most), -4, 4).sorted().distinct().toArray();
                return new StepAdjuster(id, visit, forced, 1);
            default:
                int down = random.nextInt((most + 1) / 2);
                int up = random.nextInt((most + 1) / 2);
                double step = random.nextBoolean() ? 0.25 : 1;
                return StepAdjuster.stepping(id, visit, step, -down * step, up * step);
        }
    }
}
