package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.PlanOption;
import quoin.adjustment.PlanOptions;
import quoin.adjustment.PlanReach;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.quantities.Texts;

/** What a plan has to say, in the trade's words. */
final class PlanWords {

    private static final Texts TEXTS = Texts.of(PlanWords.class);

    /** A mass that a racer can move by hand, kg, for the example in a remedy. */
    private static final double EXAMPLE_MASS_KG = 5;

    private final Day day;
    private final LegBelief legs;
    private final LegReadings readings;

    PlanWords(Day day, LegBelief legs, LegReadings readings) {
        this.day = day;
        this.legs = legs;
        this.readings = readings;
    }

    /** One line on a plan that is not the first. */
    String option(PlanOption option) {
        int visits = option.visits();
        String chance = Texts.figure("%.0f %%", 100 * option.inside().value());
        String key = (option.worthTheVisits() ? "plan.option." : "plan.noBetter.") + (visits < 2 ? visits : "n");
        return TEXTS.say(key, chance, visits);
    }

    /** One line on turns chosen for their chance. */
    String likeliest(double chance, double smallestErrors) {
        return TEXTS.say("plan.likeliest", Texts.figure("%.0f %%", 100 * chance), Texts.figure("%.0f %%", 100 * smallestErrors));
    }

    List<String> assumed() {
        return legs.assumed().assumptions().stream().map(RoundPlanner::words).toList();
    }

    /** What turning cannot do, with the remedy. */
    List<String> notReachable(PlanOptions offered) {
        List<String> lines = new ArrayList<>();
        List<ReadingId> goals = readings.goals();
        for (PlanReach reach : offered.outOfReach()) {
            lines.add(outOfReach(goals.get(reach.reading()), reach));
        }
        if (lines.isEmpty() && offered.conflict().isPresent()) {
            List<String> stay = offered.conflict().get().readings().stream().map(i -> goals.get(i).words()).toList();
            lines.add(TEXTS.say(stay.size() == 1 ? "plan.conflict.one" : "plan.conflict.many", String.join(", ", stay)));
        }
        return lines;
    }

    private String outOfReach(ReadingId reading, PlanReach reach) {
        if (reading.kind() == ReadingKind.LEFT_SHARE || reading.kind() == ReadingKind.FRONT_SHARE) {
            return onlyMassMoves(reading);
        }
        return switch (reach.kind()) {
            case NOTHING_MOVES_IT -> TEXTS.say("plan.nothingMoves", reading.words());
            case RANGE_ENDS -> TEXTS.say("plan.rangeEnds", reading.words(),
                    String.join(", ", reach.adjustersAtEnd().stream().map(id -> AdjusterId.parse(id).words()).toList()));
            case STEPS_TOO_COARSE -> TEXTS.say("plan.coarse", reading.words());
            case IN_REACH -> "";
        };
    }

    /** Shares follow the masses: moving m by d changes a share by m d / (total * track or wheelbase). */
    private String onlyMassMoves(ReadingId reading) {
        double error = readings.errors()[readings.goals().indexOf(reading)];
        boolean left = reading.kind() == ReadingKind.LEFT_SHARE;
        double span = left ? (day.car().trackMm(Axle.FRONT) + day.car().trackMm(Axle.REAR)) / 2 : day.car().wheelbaseMm();
        double moment = Math.abs(error) / 100 * legs.assumed().totalKg() * span;
        String where = TEXTS.say(left ? (error > 0 ? "way.right" : "way.left") : (error > 0 ? "way.rearward" : "way.forward"));
        double share = day.targets().of(reading).orElseThrow().value() + error;
        return TEXTS.say("plan.onlyMass", reading.kind().words(), Texts.figure("%.0f", EXAMPLE_MASS_KG),
                Texts.figure("%.0f", moment / EXAMPLE_MASS_KG), where, Texts.figure("%.1f", share));
    }
}
