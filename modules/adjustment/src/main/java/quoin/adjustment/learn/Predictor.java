package quoin.adjustment.learn;

import java.util.List;

/** Readings to expect, for given parameters, under a suspect. */
final class Predictor {

    private final CarModel model;
    private final List<Settling> history;
    private final Suspect suspect;

    Predictor(CarModel model, List<Settling> history, Suspect suspect) {
        this.model = model;
        this.history = history;
        this.suspect = suspect;
    }

    int parameters() {
        return model.parameters() + (suspect.free() ? 1 : 0);
    }

    /** Response of loads and heights at the parameters. */
    double[][] response(double[] p) {
        double[] rates = model.rates(p);
        double[] bar = model.bar().clone();
        if (suspect.kind() == Suspect.Kind.RATE) {
            rates[suspect.index()] *= Math.exp(extra(p));
        } else if (suspect.kind() == Suspect.Kind.BAR) {
            int left = suspect.index() * 2;
            bar[suspect.index()] += Math.exp(extra(p)) * (rates[left] + rates[left + 1]) / 2;
        }
        return model.springs().response(rates, bar);
    }

    private double[][] laterResponse(double[] p, double[][] plain) {
        if (suspect.kind() != Suspect.Kind.RATE_FROM) {
            return plain;
        }
        double[] rates = model.rates(p);
        rates[suspect.index()] *= Math.exp(extra(p));
        return model.springs().response(rates, model.bar());
    }

    private double extra(double[] p) {
        return p[model.parameters()];
    }

    /** Expected readings of every settling, 8 each. */
    double[][] predict(double[] p) {
        double[][] early = response(p);
        double[][] late = laterResponse(p, early);
        double[] moved = new double[8];
        double[] asFound = model.asFound(p);
        double[][] out = new double[history.size()][8];
        for (int r = 0; r < out.length; r++) {
            Settling s = history.get(r);
            double[][] now = r >= suspect.at() ? late : early;
            double[] turns = turns(p, s.turns(), r);
            double[] e = model.offsets(p, turns);
            for (int i = 0; i < 8; i++) {
                for (int c = 0; c < 4; c++) {
                    moved[i] += now[i][c] * e[c];
                }
                for (int a = 0; a < turns.length; a++) {
                    moved[i] += model.correction()[i][a] * turns[a];
                }
                out[r][i] = asFound[i] + moved[i];
                for (int c = 0; c < 3; c++) {
                    out[r][i] += early[i][FourSprings.LOAD + c] * s.load()[c];
                }
            }
            if (suspect.kind() == Suspect.Kind.FIGURE && suspect.at() == r) {
                out[r][suspect.index()] += extra(p);
            }
            if (suspect.kind() == Suspect.Kind.MOMENT && suspect.at() == r) {
                for (int i = 0; i < 8; i++) {
                    out[r][i] += early[i][FourSprings.LOAD + 1 + suspect.index()] * extra(p);
                }
            }
        }
        return out;
    }

    private double[] turns(double[] p, double[] counted, int reading) {
        double[] turns = counted;
        if (suspect.kind() == Suspect.Kind.TURNS && suspect.at() == reading) {
            turns = counted.clone();
            turns[suspect.index()] += extra(p);
        } else if (suspect.kind() == Suspect.Kind.LIFT) {
            turns = counted.clone();
            turns[suspect.index()] *= 1 + extra(p);
        }
        return turns;
    }
}
