package quoin.ballast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.KnownMass;
import quoin.car.MassZone;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.MassMoves;
import quoin.mechanics.MassPlacement;
import quoin.mechanics.MassPlacement.Wish;
import quoin.mechanics.PointMass;
import quoin.mechanics.SearchWatch;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.DaySnapshot;

/** Ways to a wanted front and left share: masses on board moved, or ballast added in each of the places for it. */
@Messages({
    "# {0} - moves", "moves.move=Move {0}", "moves.join=, and ",
    "# {0} - name", "# {1} - mass", "# {2} - zone", "# {3} - place", "moves.one={0} ({1}) into {2}: {3}",
    "moves.stay=Leave everything where it is",
    "# {0} - mass", "# {1} - zone", "# {2} - place", "moves.add=Add {0} in {1}: {2}",
    "# {0} - zone", "moves.none={0}: no mass there gives the wish",
    "# {0} - zone", "moves.enough={0}: nothing needed, the shares are inside",
    "# {0} - distance", "moves.behind={0} behind the front axle", "# {0} - distance", "moves.ahead={0} ahead of the front axle",
    "# {0} - distance", "moves.left={0} left of centre", "# {0} - distance", "moves.right={0} right of centre",
    "# {0} - height", "moves.high={0} high",
    "# {0} - name", "# {1} - mass", "# {2} - place", "moves.own=Move {0} ({1}) to {2}",
    "# {0} - name", "# {1} - mass", "# {2} - place", "moves.ownOn=Put in {0} ({1}): {2}",
    "# {0} - name", "# {1} - mass", "moves.ownOff=Take out {0} ({1})",
    "# {0} - reason", "moves.tooMany=Moves of the masses on board were not searched: {0}"})
final class MoveChoices {

    /**
     * One way.
     *
     * @param words    what is done
     * @param masses   put in and taken out; empty = nothing is done, or nothing can be
     * @param possible false where this way does not lead to the wish at all
     * @param kept     the masses of the car after it was done
     */
    record Way(String words, List<PointMass> masses, boolean possible, List<KnownMass> kept) {
        Way {
            masses = List.copyOf(masses);
            kept = List.copyOf(kept);
        }

        /** Mass added, kg. */
        double addedKg() {
            return masses.stream().mapToDouble(PointMass::massKg).sum();
        }
    }

    private MoveChoices() {
    }

    /** Masses that may be moved: parts and ballast. */
    static List<KnownMass> movable(Car car) {
        return car.masses().known().stream().filter(m -> m.role() == KnownMass.Role.PART || m.role() == KnownMass.Role.BALLAST)
                .filter(m -> m.massKg() > 0).toList();
    }

    /**
     * Moves of what is on board first, then ballast by place, the least first. May take seconds.
     *
     * @throws java.util.concurrent.CancellationException where the watch gives up
     */
    static List<Way> ways(DaySnapshot day, Standing standing, Wish wish, double pieceKg, SearchWatch watch) {
        List<Way> ways = new ArrayList<>();
        Car car = standing.car();
        List<MassZone> zones = car.masses().zones();
        if (!movable(car).isEmpty() && !zones.isEmpty()) {
            ways.add(moves(day, standing, wish, watch));
        }
        List<Way> added = new ArrayList<>();
        for (MassZone zone : zones) {
            added.add(MassPlacement.exact(standing.model(), zone, wish, pieceKg).map(p -> added(day, car, p))
                    .orElseGet(() -> new Way(Bundle.moves_none(zone.name()), List.of(), false, car.masses().known())));
        }
        added.sort(java.util.Comparator.comparing((Way w) -> !w.possible()).thenComparingDouble(Way::addedKg));
        ways.addAll(added);
        return ways;
    }

    private static Way moves(DaySnapshot day, Standing standing, Wish wish, SearchWatch watch) {
        Car car = standing.car();
        List<MassMoves.Item> items = movable(car).stream().map(m -> new MassMoves.Item(m.name(), m.massKg(),
                new SpacePoint(m.xMm(), m.yMm(), m.zMm()))).toList();
        MassMoves.Moved moved;
        try {
            moved = MassMoves.best(standing.model(), items, car.masses().zones(), wish, watch);
        } catch (InvalidInputException e) {
            return new Way(Bundle.moves_tooMany(e.getLocalizedMessage()), List.of(), false, car.masses().known());
        }
        if (moved.moves().isEmpty()) {
            return new Way(Bundle.moves_stay(), List.of(), true, car.masses().known());
        }
        String words = Bundle.moves_move(moved.moves().stream().map(m -> Bundle.moves_one(m.item().name(), mass(day, m.item().massKg()),
                m.zone().name(), place(day, m.to()))).collect(Collectors.joining(Bundle.moves_join())));
        List<KnownMass> kept = new ArrayList<>(car.masses().known());
        moved.moves().forEach(m -> kept.replaceAll(k -> isItem(k, m.item())
                ? new KnownMass(k.name(), k.role(), k.massKg(), m.to().xMm(), m.to().yMm(), m.to().zMm()) : k));
        return new Way(words, moved.change(), true, kept);
    }

    private static boolean isItem(KnownMass known, MassMoves.Item item) {
        return known.name().equals(item.name()) && known.massKg() == item.massKg()
                && new SpacePoint(known.xMm(), known.yMm(), known.zMm()).equals(item.place());
    }

    private static Way added(DaySnapshot day, Car car, MassPlacement.Placed placed) {
        if (placed.massKg() == 0) {
            return new Way(Bundle.moves_enough(placed.zone().name()), List.of(), true, car.masses().known());
        }
        List<KnownMass> kept = new ArrayList<>(car.masses().known());
        kept.add(new KnownMass(placed.zone().name(), KnownMass.Role.BALLAST, placed.massKg(), placed.place().xMm(), placed.place().yMm(),
                placed.place().zMm()));
        return new Way(Bundle.moves_add(mass(day, placed.massKg()), placed.zone().name(), place(day, placed.place())), placed.change(), true, kept);
    }

    /**
     * A move of the racer's own.
     *
     * @param listed the mass among those of the car; empty = one the car does not know
     * @param name   of the thing
     * @param from   where it is; empty = it comes on board
     * @param to     where it shall be; empty = it is taken off the car
     */
    static Way own(DaySnapshot day, Optional<KnownMass> listed, String name, double massKg, Optional<SpacePoint> from, Optional<SpacePoint> to) {
        List<KnownMass> kept = new ArrayList<>(day.car().masses().known());
        List<PointMass> masses = new ArrayList<>();
        from.ifPresent(f -> masses.add(new PointMass(-massKg, f)));
        to.ifPresent(t -> masses.add(new PointMass(massKg, t)));
        listed.ifPresent(kept::remove);
        KnownMass.Role role = listed.map(KnownMass::role).orElse(from.isPresent() ? KnownMass.Role.PART : KnownMass.Role.BALLAST);
        to.ifPresent(t -> kept.add(new KnownMass(name, role, massKg, t.xMm(), t.yMm(), t.zMm())));
        String kg = mass(day, massKg);
        String words = to.isEmpty() ? Bundle.moves_ownOff(name, kg)
                : from.isEmpty() ? Bundle.moves_ownOn(name, kg, place(day, to.get())) : Bundle.moves_own(name, kg, place(day, to.get()));
        return new Way(words, masses, true, kept);
    }

    static String mass(DaySnapshot day, double kg) {
        return QuantityFormat.of(day.units().preferences()).text(kg, Dimension.MASS);
    }

    /** "900 mm behind the front axle, 420 mm left of centre, 110 mm high". */
    static String place(DaySnapshot day, SpacePoint at) {
        QuantityFormat format = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 0));
        String along = format.text(Math.abs(at.xMm()), Dimension.LENGTH);
        String across = format.text(Math.abs(at.yMm()), Dimension.LENGTH);
        return (at.xMm() > 0 ? Bundle.moves_ahead(along) : Bundle.moves_behind(along)) + ", "
                + (at.yMm() >= 0 ? Bundle.moves_left(across) : Bundle.moves_right(across)) + ", "
                + Bundle.moves_high(format.text(at.zMm(), Dimension.LENGTH));
    }
}
