package quoin.adjustment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.adjustment.learn.Departure;
import quoin.adjustment.learn.Suspect;
import quoin.car.Corner;
import quoin.quantities.Texts;

/**
 * A corner that answered oddly over the rounds of the day, with the evidence: the single cause that explains the readings
 * best, and by what odds it beats a sound car of the springs believed (Bayes factor, every unknown averaged over).
 *
 * @param cause the cause
 * @param corner the corner; for a bar the left corner of its axle
 * @param odds how many times likelier the readings are with that cause than without
 * @param amount how much: turns made in place of those recorded for a miscount, share of the recorded lift for a ring,
 *     factor of the believed wheel rate for a spring or bump stop, bar rate over the wheel rate for a bar
 * @param sd standard uncertainty of the amount
 * @param rival another cause nearly as good (within a factor of ten); empty = this one stands alone
 * @param words the finding in one or two sentences, with the evidence
 */
public record OddCorner(Cause cause, Corner corner, double odds, double amount, double sd, Optional<Cause> rival,
        String words) {
    private static final Texts TEXTS = Texts.of(OddCorner.class);

    /** Causes. */
    public enum Cause {
        /** The ring hardly lifts the corner when turned, in any round: seized, or another pitch than given. */
        SEIZED_RING,
        /** From some round on the corner is stiffer: on its bump stop, or coil bound. */
        BUMP_STOP,
        /** Another number of turns than recorded in one round. */
        MISCOUNT,
        /** A wheel rate that is not the one believed. */
        WRONG_SPRING,
        /** An anti-roll bar still connected. */
        BAR_CONNECTED
    }

    /** Natural logarithm of the odds from which a corner is named. */
    static final double NAMED = 5;
    private static final double RIVAL = Math.log(10);
    private static final double TURNS_SD = 2;
    /** A seized ring does a share of its lift between nothing and most of it: factor less one. */
    private static final double LIFT_MEAN = -0.7;
    private static final double LIFT_SD = 0.35;
    private static final double LOG_RATE_SD = 0.4;
    private static final double LOG_STOP_MEAN = 0.8;
    private static final double LOG_STOP_SD = 0.5;
    private static final double LOG_BAR_MEAN = Math.log(0.5);
    private static final double LOG_BAR_SD = 0.8;

    public OddCorner {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(corner, "corner");
        Objects.requireNonNull(rival, "rival");
    }

    /**
     * The odd corner of a day's rounds.
     *
     * @param prior what was believed of the car before the first reading
     * @param history every settled reading of the day, in order
     * @return empty where no single cause beats a sound car by enough, or nothing was turned yet
     */
    public static Optional<OddCorner> of(LearningPrior prior, List<SettledReading> history) {
        if (history.stream().noneMatch(SettledReading::turned)) {
            return Optional.empty();
        }
        List<Departure> ranked = Learner.departures(prior, history, suspects(prior, history)).stream()
                .filter(d -> d.logOdds() > NAMED).sorted(Comparator.comparingDouble(Departure::logOdds).reversed()).toList();
        return ranked.isEmpty() ? Optional.empty() : Optional.of(named(prior, history, ranked));
    }

    private static List<Suspect> suspects(LearningPrior prior, List<SettledReading> history) {
        List<Suspect> out = new ArrayList<>();
        for (int axle = 0; axle < 2; axle++) {
            out.add(new Suspect(Suspect.Kind.BAR, axle, 0, LOG_BAR_MEAN, LOG_BAR_SD));
        }
        for (int corner = 0; corner < 4; corner++) {
            out.add(new Suspect(Suspect.Kind.RATE, corner, 0, 0, LOG_RATE_SD));
            for (int r = 2; r < history.size(); r++) {
                if (history.get(r).turned()) {
                    out.add(new Suspect(Suspect.Kind.RATE_FROM, corner, r, LOG_STOP_MEAN, LOG_STOP_SD));
                }
            }
        }
        for (int a = 0; a < prior.adjusters().size(); a++) {
            int rounds = 0;
            for (int r = 1; r < history.size(); r++) {
                if (history.get(r).turns().get(a) != 0) {
                    rounds++;
                    out.add(new Suspect(Suspect.Kind.TURNS, a, r, 0, TURNS_SD));
                }
            }
            if (rounds > 1) {
                out.add(new Suspect(Suspect.Kind.LIFT, a, 0, LIFT_MEAN, LIFT_SD));
            }
        }
        return out;
    }

    private static OddCorner named(LearningPrior prior, List<SettledReading> history, List<Departure> ranked) {
        Departure best = ranked.get(0);
        Optional<Departure> other = ranked.stream().filter(d -> cause(d) != cause(best) || corner(prior, d) != corner(prior, best))
                .filter(d -> d.logOdds() > best.logOdds() - RIVAL).findFirst();
        double odds = Math.exp(Math.min(best.logOdds(), 30));
        String evidence = TEXTS.say("odd.evidence", odds >= 1000 ? TEXTS.say("odd.over") : Texts.figure("%.0f", odds),
                other.map(o -> TEXTS.say("odd.rival", brief(cause(o), corner(prior, o)))).orElse(""));
        String words = words(prior, history, best) + evidence;
        double log = best.amount();
        Corner corner = corner(prior, best);
        return switch (best.suspect().kind()) {
            case TURNS -> new OddCorner(Cause.MISCOUNT, corner, odds, counted(history, best) + log, best.sd(),
                    other.map(OddCorner::cause), words);
            case LIFT -> new OddCorner(Cause.SEIZED_RING, corner, odds, 1 + log, best.sd(), other.map(OddCorner::cause), words);
            default -> new OddCorner(cause(best), corner, odds, Math.exp(log), Math.exp(log) * best.sd(),
                    other.map(OddCorner::cause), words);
        };
    }

    private static double counted(List<SettledReading> history, Departure d) {
        return history.get(d.suspect().at()).turns().get(d.suspect().index());
    }

    private static Cause cause(Departure d) {
        return switch (d.suspect().kind()) {
            case TURNS -> Cause.MISCOUNT;
            case LIFT -> Cause.SEIZED_RING;
            case RATE -> Cause.WRONG_SPRING;
            case RATE_FROM -> Cause.BUMP_STOP;
            case BAR -> Cause.BAR_CONNECTED;
            default -> throw new IllegalArgumentException("no corner's cause: " + d.suspect().kind());
        };
    }

    private static Corner corner(LearningPrior prior, Departure d) {
        int index = d.suspect().index();
        return switch (d.suspect().kind()) {
            case TURNS, LIFT -> prior.adjusters().get(index).corner();
            case BAR -> Corner.values()[2 * index];
            default -> Corner.values()[index];
        };
    }

    private static String brief(Cause cause, Corner corner) {
        return cause == Cause.BAR_CONNECTED ? TEXTS.say(corner.isFront() ? "odd.brief.bar.front" : "odd.brief.bar.rear")
                : TEXTS.say("odd.brief." + cause, corner.words());
    }

    private static String words(LearningPrior prior, List<SettledReading> history, Departure d) {
        Corner corner = corner(prior, d);
        double factor = Math.exp(d.amount());
        double rate = prior.corners().get(corner.ordinal()).wheelRateNPerMm();
        return switch (cause(d)) {
            case MISCOUNT -> {
                double counted = counted(history, d);
                double real = counted + d.amount();
                yield TEXTS.say("odd.miscount", prior.adjusters().get(d.suspect().index()).id(), round(history, d.suspect().at()),
                        Texts.figure("%.2f", Math.abs(counted)), way(counted), Texts.figure("%.2f", Math.abs(real)), way(real),
                        Texts.figure("%.2f", 2 * d.sd()));
            }
            case SEIZED_RING -> TEXTS.say("odd.seized", prior.adjusters().get(d.suspect().index()).id(),
                    Texts.figure("%.0f", Math.max(0, 100 * (1 + d.amount()))), Texts.figure("%.0f", 200 * d.sd()));
            case WRONG_SPRING -> TEXTS.say("odd.spring", corner.words(), Texts.figure("%.0f", rate * factor),
                    Texts.figure("%.0f", 2 * rate * factor * d.sd()), Texts.figure("%.0f", rate));
            case BUMP_STOP -> TEXTS.say("odd.bump", corner.words(), Texts.figure("%.1f", factor), round(history, d.suspect().at()));
            case BAR_CONNECTED -> TEXTS.say(corner.isFront() ? "odd.bar.front" : "odd.bar.rear", Texts.figure("%.0f", 100 * factor));
        };
    }

    private static String way(double turns) {
        return TEXTS.say(turns < 0 ? "way.down" : "way.up");
    }

    /** Round of a reading: readings after turns, counted from 1. */
    private static int round(List<SettledReading> history, int at) {
        return (int) history.subList(0, at + 1).stream().filter(SettledReading::turned).count();
    }
}
