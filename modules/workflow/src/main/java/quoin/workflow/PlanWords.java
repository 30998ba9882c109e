package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quoin.adjustment.PlanOption;
import quoin.adjustment.PlanOptions;
import quoin.adjustment.PlanReach;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;

/** What a plan has to say, in the trade's words. */
final class PlanWords {

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
        String corners = visits == 0 ? "Leave everything" : visits == 1 ? "One corner" : visits + " corners";
        return String.format(Locale.ROOT, "%s: %.0f %% chance of ending inside%s.", corners, 100 * option.inside().value(),
                option.worthTheVisits() ? "" : ", no better than with fewer corners");
    }

    /** One line on turns chosen for their chance. */
    String likeliest(double chance, double smallestErrors) {
        return String.format(Locale.ROOT, "Best chance by what the readings have taught so far: %.0f %% of ending inside; the"
                + " smallest expected errors would give %.0f %%.", 100 * chance, 100 * smallestErrors);
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
            lines.add("No turning brings all targets inside at once; " + String.join(", ", stay)
                    + (stay.size() == 1 ? " stays" : " stay") + " outside. Widen a tolerance or change a target.");
        }
        return lines;
    }

    private String outOfReach(ReadingId reading, PlanReach reach) {
        if (reading.kind() == ReadingKind.LEFT_SHARE || reading.kind() == ReadingKind.FRONT_SHARE) {
            return onlyMassMoves(reading);
        }
        return switch (reach.kind()) {
            case NOTHING_MOVES_IT -> "No perch or pushrod that may be turned moves the " + reading.words() + ".";
            case RANGE_ENDS -> "The " + reading.words() + " cannot reach its target: the thread ends at "
                    + String.join(", ", reach.adjustersAtEnd().stream().map(id -> AdjusterId.parse(id).words()).toList()) + ".";
            case STEPS_TOO_COARSE -> "Whole steps are too coarse for the tolerance of the " + reading.words() + ".";
            case IN_REACH -> "";
        };
    }

    /** Shares follow the masses: moving m by d changes a share by m d / (total * track or wheelbase). */
    private String onlyMassMoves(ReadingId reading) {
        double error = readings.errors()[readings.goals().indexOf(reading)];
        boolean left = reading.kind() == ReadingKind.LEFT_SHARE;
        double span = left ? (day.car().trackMm(Axle.FRONT) + day.car().trackMm(Axle.REAR)) / 2 : day.car().wheelbaseMm();
        double moment = Math.abs(error) / 100 * legs.assumed().totalKg() * span;
        String where = left ? (error > 0 ? "to the right" : "to the left") : (error > 0 ? "rearward" : "forward");
        double share = day.targets().of(reading).orElseThrow().value() + error;
        return String.format(Locale.ROOT, "Perches cannot change the %s; move %.0f kg %.0f mm %s or accept %.1f %%.",
                reading.kind().words(), EXAMPLE_MASS_KG, moment / EXAMPLE_MASS_KG, where, share);
    }
}
