package quoin.mechanics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.MassZone;
import quoin.mechanics.MassPlacement.Scale;
import quoin.mechanics.MassPlacement.Wish;
import quoin.quantities.Texts;

/**
 * Which of the masses on board to move where, for a wanted front and left share. Every choice of zones is tried; within
 * one choice the shares that can be reached are an interval in each direction, so each choice is solved exactly: the
 * heaviest masses go furthest, which is the least way in all.
 */
public final class MassMoves {
    private static final Texts TEXTS = Texts.of(MassMoves.class);
    /** Choices tried at most; fewer zones or masses are to be given beyond it. */
    public static final int MOST_CHOICES = 500_000;
    private static final int CHOICES_BETWEEN_LOOKS = 256;
    private static final double MET_PERCENT = 1e-7;
    private static final double EQUAL_MM = 1e-6;

    private MassMoves() {
    }

    /**
     * A mass on board that can be moved.
     *
     * @param name   as the racer calls it
     * @param massKg greater than 0
     * @param place  where it is now
     */
    public record Item(String name, double massKg, SpacePoint place) {
        public Item {
            Require.positive(name + " mass", massKg);
        }
    }

    /** One mass moved into a zone. */
    public record Move(Item item, MassZone zone, SpacePoint to) {
        public double distanceMm() {
            return Math.hypot(to.xMm() - item.place().xMm(), to.yMm() - item.place().yMm());
        }
    }

    /**
     * Moves that belong together.
     *
     * @param moves       none = everything stays
     * @param missPercent how far the worse share stays outside the wish by moments; 0 = met
     */
    public record Moved(List<Move> moves, double missPercent) {
        public Moved {
            moves = List.copyOf(moves);
        }

        /** Every moved mass taken out of its old place and put into its new one. */
        public List<PointMass> change() {
            List<PointMass> all = new ArrayList<>();
            for (Move move : moves) {
                all.add(new PointMass(-move.item().massKg(), move.item().place()));
                all.add(new PointMass(move.item().massKg(), move.to()));
            }
            return all;
        }

        double distanceMm() {
            return moves.stream().mapToDouble(Move::distanceMm).sum();
        }
    }

    /**
     * The best moves with the exact equilibrium: nearest to the wish, then fewest masses, then least way.
     *
     * @throws InvalidInputException where there are more than {@value #MOST_CHOICES} choices
     */
    public static Moved best(CarModel car, List<Item> items, List<MassZone> zones, Wish wish) {
        return best(car, items, zones, wish, SearchWatch.NONE);
    }

    /**
     * The same under a watch.
     *
     * @throws InvalidInputException where there are more than {@value #MOST_CHOICES} choices
     * @throws java.util.concurrent.CancellationException where the watch gives up
     */
    public static Moved best(CarModel car, List<Item> items, List<MassZone> zones, Wish wish, SearchWatch watch) {
        if (Math.pow(zones.size() + 1.0, items.size()) > MOST_CHOICES) {
            throw new InvalidInputException("movable masses", TEXTS.phrase("tooManyChoicesOf", items.size(), zones.size()));
        }
        Equilibrium now = CornerLoads.solve(car, Turns.NONE);
        int[] rounds = new int[1];
        // How many times the wish has to be shifted is not known: each round is half of what is left.
        return MassPlacement.refined(car, now, wish, w -> {
            double before = 1 - Math.pow(0.5, rounds[0]++);
            return Optional.of(byMoments(car, now, items, zones, w, share -> watch.goesOn(before + (1 - before) * share / 2)));
        }, Moved::change).orElseThrow();
    }

    /** The best moves by moments: wheels as the only supports, body not moving, left share by the mean track. */
    public static Moved byMoments(CarModel car, Equilibrium now, List<Item> items, List<MassZone> zones, Wish wish) {
        return byMoments(car, now, items, zones, wish, SearchWatch.NONE);
    }

    private static Moved byMoments(CarModel car, Equilibrium now, List<Item> items, List<MassZone> zones, Wish wish, SearchWatch watch) {
        Comparator<Moved> better = Comparator.<Moved>comparingDouble(m -> m.missPercent() < MET_PERCENT ? 0 : m.missPercent())
                .thenComparingInt(m -> m.moves().size()).thenComparingDouble(Moved::distanceMm);
        Moved best = new Moved(List.of(), wish.missPercent(now.shares().frontPercent(), now.shares().leftPercent()));
        int[] choice = new int[items.size()];
        double all = Math.pow(zones.size() + 1.0, items.size());
        for (long count = 0; next(choice, zones.size()); count++) {
            if (count % CHOICES_BETWEEN_LOOKS == 0) {
                watch.orGiveUp(count / all);
            }
            Moved tried = solved(car, now, items, zones, choice, wish);
            if (better.compare(tried, best) < 0) {
                best = tried;
            }
        }
        return best;
    }

    /** Counts up; 0 = the mass stays, k = zone k - 1. */
    private static boolean next(int[] choice, int zones) {
        for (int i = 0; i < choice.length; i++) {
            if (choice[i] < zones) {
                choice[i]++;
                return true;
            }
            choice[i] = 0;
        }
        return false;
    }

    private static Moved solved(CarModel car, Equilibrium now, List<Item> items, List<MassZone> zones, int[] choice, Wish wish) {
        List<Item> moved = new ArrayList<>();
        List<MassZone> into = new ArrayList<>();
        for (int i = 0; i < choice.length; i++) {
            if (choice[i] > 0) {
                moved.add(items.get(i));
                into.add(zones.get(choice[i] - 1));
            }
        }
        Scale along = MassPlacement.along(car);
        Scale across = MassPlacement.across(car);
        double[] mass = moved.stream().mapToDouble(Item::massKg).toArray();
        Line x = new Line(mass, moved.stream().mapToDouble(m -> along.of(m.place().xMm())).toArray(),
                into.stream().mapToDouble(z -> along.of(z.rearXMm())).toArray(), into.stream().mapToDouble(z -> along.of(z.frontXMm())).toArray());
        Line y = new Line(mass, moved.stream().mapToDouble(m -> across.of(m.place().yMm())).toArray(),
                into.stream().mapToDouble(z -> across.of(z.rightYMm())).toArray(), into.stream().mapToDouble(z -> across.of(z.leftYMm())).toArray());
        double front = x.towards(car.totalMassKg(), now.shares().frontPercent(), wish.frontPercent(), wish.tolerancePercent());
        double left = y.towards(car.totalMassKg(), now.shares().leftPercent(), wish.leftPercent(), wish.tolerancePercent());
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < mass.length; i++) {
            SpacePoint to = new SpacePoint(along.back(x.at[i]), across.back(y.at[i]), into.get(i).zMm());
            Move move = new Move(moved.get(i), into.get(i), to);
            if (move.distanceMm() > EQUAL_MM || Math.abs(to.zMm() - moved.get(i).place().zMm()) > EQUAL_MM) {
                moves.add(move);
            }
        }
        return new Moved(moves, wish.missPercent(front, left));
    }

    /** Masses along one direction, each moved as little as its zone asks for until more is needed. */
    private static final class Line {
        private final double[] mass;
        private final double[] was;
        private final double[] from;
        private final double[] to;
        private final double[] at;

        Line(double[] mass, double[] was, double[] from, double[] to) {
            this.mass = mass;
            this.was = was;
            this.from = from;
            this.to = to;
            this.at = new double[mass.length];
            for (int i = 0; i < mass.length; i++) {
                at[i] = Math.max(from[i], Math.min(to[i], was[i]));
            }
        }

        /** Moves the masses, heaviest first, and gives the share reached, percent. */
        double towards(double total, double nowPercent, OptionalDouble wanted, double tolerance) {
            double moment = total * nowPercent / 100;
            for (int i = 0; i < mass.length; i++) {
                moment += mass[i] * (at[i] - was[i]);
            }
            if (wanted.isPresent()) {
                double low = total * (wanted.getAsDouble() - tolerance) / 100;
                double high = total * (wanted.getAsDouble() + tolerance) / 100;
                boolean[] done = new boolean[mass.length];
                for (int i = heaviest(done); i >= 0; i = heaviest(done)) {
                    done[i] = true;
                    double need = moment < low ? low - moment : moment > high ? high - moment : 0;
                    double place = Math.max(from[i], Math.min(to[i], at[i] + need / mass[i]));
                    moment += mass[i] * (place - at[i]);
                    at[i] = place;
                }
            }
            return 100 * moment / total;
        }

        private int heaviest(boolean[] done) {
            int best = -1;
            for (int i = 0; i < mass.length; i++) {
                if (!done[i] && (best < 0 || mass[i] > mass[best])) {
                    best = i;
                }
            }
            return best;
        }
    }
}
