package quoin.rehearsal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.WheelAngles;

/**
 * A simulated car that answers to the turns and conditions recorded in a day, so that a whole day can be walked without
 * a car. Loads and heights come from the exact equilibrium of the hidden car; camber, caster and toe follow their
 * adjusters and the wheel's bump by stated linear effects. Everything is read as an instrument would show it: with noise,
 * rounded to what it resolves. The same day and seed always give the same readings; reading again (one more entry) draws
 * the instruments' noise anew, settling or turning draws friction anew too.
 *
 * <p>What the day does not say is as found: driver out, bars joined, pads on the bare floor, scales not zeroed.
 */
public final class PracticeCar {

    /** Smallest step of the pressure gauge, bar. */
    private static final double PRESSURE_RESOLUTION_BAR = 0.02;
    /** How far the pressures are off before they are set, standard deviation in bar. */
    private static final double PRESSURE_FOUND_BAR = 0.06;

    private final Car car;
    private final HiddenTruth truth;
    private final HiddenCar hidden;
    private final ReadingNoise noise;

    /**
     * A car with another truth behind it.
     *
     * @param car   the car as its racer believes it to be
     * @param truth what it is really like
     * @param seed  chooses the noise
     */
    public PracticeCar(Car car, HiddenTruth truth, long seed) {
        this.car = car;
        this.truth = truth;
        this.hidden = new HiddenCar(car, truth);
        this.noise = new ReadingNoise(seed);
    }

    /** The demo car, {@link Ouzel23}. */
    public static PracticeCar ouzel23(long seed) {
        return new PracticeCar(Ouzel23.car(), Ouzel23.truth(), seed);
    }

    /** The car as its racer believes it to be. */
    public Car car() {
        return car;
    }

    /**
     * What the racer would read now.
     *
     * @param day    the day so far
     * @param wanted what to read; what this car does not have and what is computed from other readings is left out
     * @return base-unit values in the order wanted
     */
    public Map<ReadingId, Double> read(Day day, List<ReadingId> wanted) {
        return read(day, wanted, truth.noise(), true);
    }

    /** What perfect instruments would read now, nothing rounded and no friction; scale errors stay. */
    public Map<ReadingId, Double> exact(Day day, List<ReadingId> wanted) {
        return read(day, wanted, HiddenTruth.Noise.NONE, false);
    }

    private Map<ReadingId, Double> read(Day day, List<ReadingId> wanted, HiddenTruth.Noise level, boolean rounded) {
        Moment moment = new Moment(Situation.of(day), hidden.standing(day), day.revision(), level, rounded);
        Map<ReadingId, Double> read = new LinkedHashMap<>();
        for (ReadingId id : wanted) {
            value(own(id, day.car()), moment).ifPresent(value -> read.put(id, value));
        }
        return read;
    }

    /** The day may call the points of the frame otherwise, in the language it was begun in: the point at the same corner is meant. */
    private ReadingId own(ReadingId id, Car named) {
        if (id.kind() != ReadingKind.HEIGHT || car.heightPoints().stream().anyMatch(p -> p.reading().equals(id))) {
            return id;
        }
        return named.heightPoints().stream().filter(p -> p.reading().equals(id) && p.corner().isPresent())
                .flatMap(p -> car.heightPoints().stream().filter(o -> o.corner().equals(p.corner()))).map(HeightPoint::reading)
                .findFirst().orElse(id);
    }

    /** All that one look at the car needs. */
    private record Moment(Situation now, Equilibrium standing, long entry, HiddenTruth.Noise level, boolean rounded) {

        double shown(double value, double resolution) {
            // the last step takes away what 0.2 cannot say in binary: 159.6, not 159.60000000000002
            return rounded ? Math.round(Math.round(value / resolution) * resolution * 1e6) / 1e6 : value;
        }
    }

    private OptionalDouble value(ReadingId id, Moment moment) {
        if (id.kind() == ReadingKind.HEIGHT) {
            Double height = moment.standing().rideHeightsMm().get(id.place());
            return height == null ? OptionalDouble.empty() : OptionalDouble.of(moment.shown(
                    height + moment.level().heightMm() * draw(id, moment), car.instruments().heightResolutionMm()));
        }
        if (id.kind().isDerived()) {
            return OptionalDouble.empty();
        }
        for (Corner corner : Corner.values()) {
            if (corner.name().equals(id.place())) {
                return atCorner(id, corner, moment);
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble atCorner(ReadingId id, Corner corner, Moment moment) {
        Instruments tools = car.instruments();
        double angle = moment.level().angleDeg() * draw(id, moment);
        return switch (id.kind()) {
            case LOAD -> OptionalDouble.of(moment.shown(scaleKg(id, corner, moment), tools.scaleResolutionKg()));
            case CAMBER -> OptionalDouble.of(moment.shown(angles(corner, moment).camberDeg() + angle, tools.angleResolutionDeg()));
            case CASTER -> corner.isFront()
                    ? OptionalDouble.of(moment.shown(angles(corner, moment).casterDeg() + angle, tools.angleResolutionDeg()))
                    : OptionalDouble.empty();
            case TOE -> OptionalDouble.of(toeDeg(id, corner, moment));
            case PAD_HEIGHT -> OptionalDouble.of(moment.shown(padMm(corner, moment), tools.heightResolutionMm()));
            case PRESSURE -> pressureBar(id, corner, moment);
            case SCALE_ZERO -> OptionalDouble.of(moment.shown(zeroKg(corner, moment), tools.scaleResolutionKg()));
            default -> OptionalDouble.empty();
        };
    }

    private double draw(ReadingId id, Moment moment) {
        return noise.normal(moment.entry(), id.toString());
    }

    private HiddenTruth.Angles angles(Corner corner, Moment moment) {
        return hidden.angles(corner, moment.now(), moment.standing());
    }

    private double scaleKg(ReadingId id, Corner corner, Moment moment) {
        Situation now = moment.now();
        double held = moment.level().frictionKg() * (now.settled() ? 1 : moment.level().unsettledFactor())
                * noise.normal(now.lastSettled(), "friction");
        // friction holds a couple between the axles: alike on a diagonal, in proportion to the lever on each axle
        double mean = (car.trackMm(Axle.FRONT) + car.trackMm(Axle.REAR)) / 2;
        double sign = corner == Corner.LF || corner == Corner.RR ? 1 : -1;
        double load = moment.standing().loadsKgf().get(corner) + sign * held * mean / car.trackMm(corner.axle());
        double factor = isZeroed(now) ? 1 : truth.scales().factor().get(corner);
        return load * factor + zeroKg(corner, moment) + moment.level().scaleKg() * draw(id, moment);
    }

    private double zeroKg(Corner corner, Moment moment) {
        return isZeroed(moment.now()) ? 0 : truth.scales().zeroKg().get(corner);
    }

    private static boolean isZeroed(Situation now) {
        return now.is(Conditions.SCALES, Conditions.ZEROED);
    }

    private double toeDeg(ReadingId id, Corner corner, Moment moment) {
        double chord = hidden.rimChordMm(corner);
        double mm = WheelAngles.toeMm(angles(corner, moment).toeDeg(), chord) + moment.level().toeMm() * draw(id, moment);
        return WheelAngles.toeDeg(moment.shown(mm, car.instruments().toeResolutionMm()), chord);
    }

    private double padMm(Corner corner, Moment moment) {
        PerCorner<Double> pads = hidden.padsMm(moment.now());
        double lowest = Math.min(Math.min(pads.lf(), pads.rf()), Math.min(pads.lr(), pads.rr()));
        return pads.get(corner) - lowest;
    }

    private OptionalDouble pressureBar(ReadingId id, Corner corner, Moment moment) {
        OptionalDouble wanted = car.loadCase().pressureBar().get(corner.axle());
        if (wanted.isEmpty()) {
            return wanted;
        }
        boolean set = moment.now().is(Conditions.PRESSURES, Conditions.SET);
        double off = set ? 0 : PRESSURE_FOUND_BAR * noise.normal(0, id.toString());
        return OptionalDouble.of(moment.shown(wanted.getAsDouble() + off, PRESSURE_RESOLUTION_BAR));
    }
}
