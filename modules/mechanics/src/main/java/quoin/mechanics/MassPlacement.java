package quoin.mechanics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import quoin.car.Axle;
import quoin.car.MassZone;

/**
 * Least mass and its place for a wanted front and left share. Exact: for one zone the wish is four conditions linear in
 * the mass, so the least mass is the largest of at most four quotients. Derived here from the balance of moments
 * {@code (M + m) s' = M s + m p}, with p the share of a mass lying at a place (1 at the front axle, 0 at the rear).
 */
public final class MassPlacement {
    private static final double TO_PERCENT = 100;
    private static final double SETTLED_PERCENT = 1e-9;
    private static final int MAX_ROUNDS = 40;

    private MassPlacement() {
    }

    /**
     * Shares that are wanted.
     *
     * @param frontPercent     front share; empty = any
     * @param leftPercent      left share; empty = any
     * @param tolerancePercent half width of both bands
     */
    public record Wish(OptionalDouble frontPercent, OptionalDouble leftPercent, double tolerancePercent) {
        public Wish {
            Require.notNegative("tolerance_percent", tolerancePercent);
        }

        /** How far shares are outside the wish, percent, the worse of both; 0 = inside. */
        public double missPercent(double front, double left) {
            return Math.max(miss(frontPercent, front), miss(leftPercent, left));
        }

        private double miss(OptionalDouble wanted, double is) {
            return wanted.isEmpty() ? 0 : Math.max(0, Math.abs(is - wanted.getAsDouble()) - tolerancePercent);
        }

        Wish shifted(double front, double left) {
            return new Wish(shift(frontPercent, front), shift(leftPercent, left), tolerancePercent);
        }

        private static OptionalDouble shift(OptionalDouble wanted, double by) {
            return wanted.isEmpty() ? wanted : OptionalDouble.of(wanted.getAsDouble() + by);
        }
    }

    /**
     * A mass in a zone.
     *
     * @param zone   where
     * @param massKg how much, 0 = nothing needed
     * @param place  its centre of gravity
     */
    public record Placed(MassZone zone, double massKg, SpacePoint place) {

        /** The mass put in. */
        public List<PointMass> change() {
            return massKg > 0 ? List.of(new PointMass(massKg, place)) : List.of();
        }
    }

    /** Linear position of a place along one axis: 0 to 1 from wheel to wheel. */
    record Scale(double zeroMm, double oneMm) {
        double of(double mm) {
            return (mm - zeroMm) / (oneMm - zeroMm);
        }

        double back(double share) {
            return zeroMm + share * (oneMm - zeroMm);
        }
    }

    /** Range of masses, kg; empty where the least is above the most. */
    private record Range(double least, double most) {
        Range and(Range other) {
            return new Range(Math.max(least, other.least), Math.min(most, other.most));
        }
    }

    /** A present share, the band it shall be brought to and where the mass may lie, all as fractions. */
    private record Line(double mass, double now, double low, double high, double from, double to) {

        Range masses() {
            return atLeast(low - now, to - low).and(atLeast(now - high, high - from));
        }

        /** Masses m with m * reach >= mass * wanted. */
        private Range atLeast(double wanted, double reach) {
            if (wanted <= 0) {
                return new Range(0, reach >= 0 ? Double.POSITIVE_INFINITY : mass * wanted / reach);
            }
            return reach > 0 ? new Range(mass * wanted / reach, Double.POSITIVE_INFINITY) : new Range(1, 0);
        }

        /** Where the given mass has to lie, as near the middle of the band as the zone allows; any share will do = mid-zone. */
        double place(double m) {
            if (Double.isInfinite(low)) {
                return (from + to) / 2;
            }
            double wanted = ((mass + m) * (low + high) / 2 - mass * now) / m;
            return Math.max(from, Math.min(to, wanted));
        }
    }

    /**
     * The least mass in one zone by moments: wheels as the only supports, body not moving, left share by the mean track.
     *
     * @param car    the car as it stands
     * @param now    its state of rest
     * @param pieceKg the mass comes in whole pieces of this, kg; 0 = any mass
     * @return empty where no mass in this zone gives the wish
     */
    public static Optional<Placed> byMoments(CarModel car, Equilibrium now, MassZone zone, Wish wish, double pieceKg) {
        Require.notNegative("piece_kg", pieceKg);
        Scale along = along(car);
        Scale across = across(car);
        double mass = car.totalMassKg();
        Line front = line(mass, now.shares().frontPercent(), wish.frontPercent(), wish.tolerancePercent(), along.of(zone.rearXMm()),
                along.of(zone.frontXMm()));
        Line left = line(mass, now.shares().leftPercent(), wish.leftPercent(), wish.tolerancePercent(), across.of(zone.rightYMm()),
                across.of(zone.leftYMm()));
        Range masses = front.masses().and(left.masses());
        double least = pieceKg > 0 ? pieceKg * Math.ceil(masses.least() / pieceKg - 1e-9) : masses.least();
        if (!(least <= masses.most())) {
            return Optional.empty();
        }
        SpacePoint place = least > 0
                ? new SpacePoint(along.back(front.place(least)), across.back(left.place(least)), zone.zMm())
                : new SpacePoint((zone.rearXMm() + zone.frontXMm()) / 2, (zone.rightYMm() + zone.leftYMm()) / 2, zone.zMm());
        return Optional.of(new Placed(zone, least, place));
    }

    /**
     * The least mass in one zone with the exact equilibrium: what the body's own movement and unlike tracks add to the
     * shares is taken off the wish until the solved car meets it.
     */
    public static Optional<Placed> exact(CarModel car, MassZone zone, Wish wish, double pieceKg) {
        Equilibrium now = CornerLoads.solve(car, Turns.NONE);
        return refined(car, now, wish, w -> byMoments(car, now, zone, w, pieceKg), Placed::change);
    }

    /** Solves a wish by moments, then shifts the wish by what the exact shares differ, until both agree. */
    static <T> Optional<T> refined(CarModel car, Equilibrium now, Wish wish, Function<Wish, Optional<T>> byMoments,
            Function<T, List<PointMass>> change) {
        Wish shifted = wish;
        Optional<T> found = byMoments.apply(shifted);
        for (int round = 0; round < MAX_ROUNDS && found.isPresent(); round++) {
            List<PointMass> masses = change.apply(found.get());
            Shares exact = CornerLoads.solve(car.with(masses), Turns.NONE).shares();
            double[] moments = moments(car, now, masses);
            Wish next = wish.shifted(moments[0] - exact.frontPercent(), moments[1] - exact.leftPercent());
            if (far(next.frontPercent(), shifted.frontPercent()) + far(next.leftPercent(), shifted.leftPercent()) < SETTLED_PERCENT) {
                return found;
            }
            shifted = next;
            found = byMoments.apply(shifted);
        }
        return found;
    }

    private static double far(OptionalDouble one, OptionalDouble other) {
        return one.isEmpty() ? 0 : Math.abs(one.getAsDouble() - other.getAsDouble());
    }

    /** Front and left share after some masses were put in or taken out, by moments, percent. */
    private static double[] moments(CarModel car, Equilibrium now, List<PointMass> masses) {
        double total = car.totalMassKg();
        double front = total * now.shares().frontPercent();
        double left = total * now.shares().leftPercent();
        for (PointMass mass : masses) {
            total += mass.massKg();
            front += mass.massKg() * TO_PERCENT * along(car).of(mass.place().xMm());
            left += mass.massKg() * TO_PERCENT * across(car).of(mass.place().yMm());
        }
        return new double[] {front / total, left / total};
    }

    private static Line line(double mass, double nowPercent, OptionalDouble wanted, double tolerance, double from, double to) {
        double half = tolerance / TO_PERCENT;
        double low = wanted.isPresent() ? wanted.getAsDouble() / TO_PERCENT - half : Double.NEGATIVE_INFINITY;
        double high = wanted.isPresent() ? wanted.getAsDouble() / TO_PERCENT + half : Double.POSITIVE_INFINITY;
        return new Line(mass, nowPercent / TO_PERCENT, low, high, from, to);
    }

    static Scale along(CarModel car) {
        return new Scale(car.axleX(Axle.REAR), car.axleX(Axle.FRONT));
    }

    /** The left share grows with y by one over the track; where the tracks differ their mean stands in. */
    static Scale across(CarModel car) {
        double half = (car.trackMm(Axle.FRONT) + car.trackMm(Axle.REAR)) / 4;
        return new Scale(-half, half);
    }
}
