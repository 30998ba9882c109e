package quoin.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.AssumedCorner;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.PerCorner;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Entry.ResponseTakenOver.Effect;

/**
 * What a day begins with from an earlier one: the learnt response, its uncertainty widened by its age. Of it only that holds
 * which was learnt of the car as it is described now: a changed spring or motion ratio makes the wheel rate void, another load
 * case all wheel rates, another suspension the angles. What is less certain than the description is left out.
 */
public final class TakenOver {

    /** Taking a car apart and together again costs this much of what was known, relative (common practice, no source). */
    static final double PER_DAY_BREAK = 0.01;
    /** Springs settle and joints wear: relative standard deviation that one year adds (common practice, no source). */
    static final double PER_YEAR = 0.03;
    /** Description that differs by more than this, relative, is another one. */
    private static final double SAME = 0.02;
    /** Least difference of an angle effect that is another description, deg per unit. */
    private static final double SAME_DEG = 0.005;
    /** Load beyond which wheel rates learnt under another are void, kg (common practice, no source). */
    static final double LOAD_LIMIT_KG = 10;
    private static final double DAYS_PER_YEAR = 365.25;

    private final Map<String, Effect> effects = new HashMap<>();
    private final double ageDays;
    private final boolean sameLoad;

    private TakenOver(Day day, Optional<Entry.ResponseTakenOver> entry) {
        entry.ifPresent(e -> e.effects().forEach(effect -> effects.put(effect.key(), effect)));
        ageDays = entry.map(e -> ageDays(e.learntOn(), e.header().time())).orElse(0.0);
        sameLoad = entry.map(e -> Math.abs(e.loadKg() - loadKg(day)) <= LOAD_LIMIT_KG).orElse(true);
    }

    static TakenOver of(Day day) {
        return new TakenOver(day, day.takenOver());
    }

    /** Age of what was learnt when it was taken over, days, 0 or more. */
    public static double ageDays(Instant learntOn, Instant takenOver) {
        return Math.max(0, Duration.between(learntOn, takenOver).toMinutes() / (24.0 * 60));
    }

    /** Driver, fuel and ballast of the car, kg; the fuel as recorded today, otherwise as described. */
    static double loadKg(Day day) {
        double fuel = day.condition(Conditions.FUEL).map(TakenOver::number).filter(kg -> kg >= 0)
                .orElse(day.car().masses().massOf(KnownMass.Role.FUEL));
        return day.car().masses().massOf(KnownMass.Role.DRIVER) + day.car().masses().massOf(KnownMass.Role.BALLAST) + fuel;
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    /** Standard uncertainty after the age, same unit: both widenings are relative and added in squares. */
    public static double aged(double value, double uncertainty, double ageDays) {
        double relative2 = PER_DAY_BREAK * PER_DAY_BREAK + PER_YEAR * PER_YEAR * ageDays / DAYS_PER_YEAR;
        return Math.sqrt(uncertainty * uncertainty + relative2 * value * value);
    }

    /** A learnt value with its aged uncertainty; empty where the description is another, or as certain by itself. */
    private Optional<ExpectedMove.Move> held(String key, double described, double tolerance, double describedSd) {
        return Optional.ofNullable(effects.get(key)).filter(e -> Math.abs(e.described() - described) <= tolerance)
                .map(e -> new ExpectedMove.Move(e.value(), aged(e.value(), e.uncertainty(), ageDays))).filter(m -> m.uncertainty() < describedSd);
    }

    static String rateKey(Corner corner) {
        return "wheel-rate." + corner;
    }

    static String liftKey(Axle axle, AdjusterKind kind) {
        return "lift." + axle + "." + kind.key();
    }

    static String angleKey(Axle axle, ReadingKind angle, AdjusterKind kind) {
        return angle.key() + "." + axle + "." + kind.key();
    }

    /**
     * Wheel rate of a corner, N/mm.
     *
     * @param described  by the car as described
     * @param relativeSd of the description
     */
    Optional<ExpectedMove.Move> wheelRate(Corner corner, double described, double relativeSd) {
        return sameLoad ? held(rateKey(corner), described, SAME * described, relativeSd * described) : Optional.empty();
    }

    /** Lift per turn of a kind of adjuster, as a factor on the lift as described. */
    Optional<ExpectedMove.Move> liftFactor(Axle axle, AdjusterKind kind, double describedMm, double relativeSd) {
        return held(liftKey(axle, kind), describedMm, SAME * describedMm, relativeSd * describedMm)
                .map(m -> new ExpectedMove.Move(m.amount() / describedMm, m.uncertainty() / describedMm));
    }

    /** Effect of an angle adjuster, deg per unit. */
    Optional<ExpectedMove.Move> angle(Axle axle, ReadingKind angle, AdjusterKind kind, double described, double describedSd) {
        return held(angleKey(axle, angle, kind), described, Math.max(SAME_DEG, SAME * Math.abs(described)), describedSd);
    }

    /** The car with wheel rates as learnt, put into the springs. */
    AssumedCar applied(AssumedCar assumed) {
        PerCorner<AssumedCorner> corners = PerCorner.of(c -> {
            AssumedCorner corner = assumed.corners().get(c);
            double described = corner.wheelRateNPerMm();
            double factor = wheelRate(c, described, LegBelief.rateSd(assumed.car(), c)).map(m -> m.amount() / described).orElse(1.0);
            return new AssumedCorner(corner.springRateNPerMm() * factor, corner.motionRatio(), corner.pushrodRatio(), corner.tyreRateNPerMm(),
                    corner.unsprungMassKg(), corner.rimChordMm(), corner.springLeg());
        });
        Car car = assumed.car();
        return new AssumedCar(car, corners, assumed.totalKg(), assumed.cgHeightMm(), assumed.heightPoints(), assumed.assumptions());
    }
}
