package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;

/**
 * A small car that answers in proportion: perches move the heights as one plane and the cross weight by their warp; camber
 * rods move camber, toe, heights and cross; caster rods move caster and toe; toe links move toe; a joined bar loads a
 * diagonal until its link is right; locknuts turn the toe a little. Angles are out as built, and so is the bar link.
 */
final class LinearCar {

    private static final double MM_PER_TURN = 1.5;
    private static final double CROSS_PER_TURN = 2;

    private final Map<ReadingId, Double> out = new LinkedHashMap<>();
    private double barOut;

    /** Shifts what the car reads as found. */
    LinearCar out(ReadingId id, double by) {
        out.merge(id, by, Double::sum);
        return this;
    }

    LinearCar barOut(double by) {
        barOut = by;
        return this;
    }

    private static double turned(Day day, AdjusterKind kind, Corner corner) {
        return day.turned(new AdjusterId(kind, corner));
    }

    private double out(ReadingId id) {
        return out.getOrDefault(id, 0.0);
    }

    private double camberWork(Day day, Corner corner) {
        return turned(day, AdjusterKind.CAMBER_ROD, corner) + turned(day, AdjusterKind.CAMBER_SHIM, corner);
    }

    /** LF + RR over RF + LR. */
    private static double warp(double[] corners) {
        return corners[0] - corners[1] - corners[2] + corners[3];
    }

    private double[] legs(Day day) {
        double[] legs = new double[4];
        for (Corner corner : Corner.values()) {
            legs[corner.ordinal()] = turned(day, AdjusterKind.PERCH, corner) + turned(day, AdjusterKind.PUSHROD, corner)
                    - 0.15 * camberWork(day, corner);
        }
        return legs;
    }

    private double height(Day day, Corner corner) {
        double[] legs = legs(day);
        double sign = corner == Corner.LF || corner == Corner.RR ? 1 : -1;
        return (corner.isFront() ? 62 : 70) + out(DayBook.height(corner))
                + MM_PER_TURN * (legs[corner.ordinal()] - sign * warp(legs) / 4);
    }

    private double cross(Day day, boolean joined) {
        double cross = 50 + out(DayBook.CROSS) - CROSS_PER_TURN * warp(legs(day)) / 4;
        return joined ? cross + barOut + 0.5 * turned(day, AdjusterKind.BAR_LINK, Corner.LF) : cross;
    }

    private double camber(Day day, Corner corner) {
        return -2 + out(DayBook.camber(corner)) + 0.45 * camberWork(day, corner);
    }

    private double caster(Day day, Corner corner) {
        return 5.8 + out(DayBook.caster(corner)) + 0.4 * turned(day, AdjusterKind.CASTER_ROD, corner);
    }

    private double toe(Day day, Corner corner) {
        boolean tight = day.condition(Conditions.LOCKNUTS).equals(Optional.of(Conditions.YES));
        return 0.1 + out(DayBook.toe(corner)) + 0.12 * turned(day, AdjusterKind.TOE_LINK, corner) - 0.2 * camberWork(day, corner)
                + 0.05 * turned(day, AdjusterKind.CASTER_ROD, corner) + (tight ? 0.01 : 0);
    }

    /** What is read now, all readings given. */
    Map<ReadingId, Double> read(Day day, List<ReadingId> wanted) {
        boolean joined = day.condition("front-bar").equals(Optional.of(Conditions.CONNECTED));
        Map<ReadingId, Double> loads = DayBook.loads(cross(day, joined));
        Map<ReadingId, Double> seen = new LinkedHashMap<>();
        for (ReadingId id : wanted) {
            seen.put(id, switch (id.kind()) {
                case LOAD -> loads.get(id);
                case HEIGHT -> height(day, corner(id));
                case CAMBER -> camber(day, corner(id));
                case CASTER -> caster(day, corner(id));
                case TOE -> toe(day, corner(id));
                case PRESSURE -> 1.4;
                default -> throw new IllegalArgumentException("the test car has no " + id.kind());
            });
        }
        return seen;
    }

    private static Corner corner(ReadingId id) {
        return Corner.valueOf(id.place().substring(0, 2));
    }

    /** Perch turns that bring heights and cross weight right together, to the notch. */
    Map<AdjusterId, Double> planForLegs(Day day) {
        double cross = (cross(day, false) - 50) / CROSS_PER_TURN;
        Map<AdjusterId, Double> turns = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            double sign = corner == Corner.LF || corner == Corner.RR ? 1 : -1;
            double missing = ((corner.isFront() ? 62 : 70) - height(day, corner)) / MM_PER_TURN;
            add(turns, AdjusterKind.PERCH, corner, missing + sign * cross, 8);
        }
        return turns;
    }

    /** Rod and link turns that bring camber, caster and toe right, to the flat. */
    Map<AdjusterId, Double> planForAngles(Day day) {
        Map<AdjusterId, Double> turns = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            double camber = round((-2 - camber(day, corner)) / 0.45, 6);
            double caster = corner.isFront() ? round((5.8 - caster(day, corner)) / 0.4, 6) : 0;
            add(turns, AdjusterKind.CAMBER_ROD, corner, camber, 6);
            add(turns, AdjusterKind.CASTER_ROD, corner, caster, 6);
            add(turns, AdjusterKind.TOE_LINK, corner, (0.1 - toe(day, corner) + 0.2 * camber - 0.05 * caster) / 0.12, 6);
        }
        return turns;
    }

    /** What brings a joined bar to hang free. */
    Map<AdjusterId, Double> planForBar(Day day) {
        Map<AdjusterId, Double> turns = new LinkedHashMap<>();
        add(turns, AdjusterKind.BAR_LINK, Corner.LF, (cross(day, false) - cross(day, true)) / 0.5, 6);
        return turns;
    }

    private static double round(double turns, int steps) {
        return (double) Math.round(turns * steps) / steps;
    }

    private static void add(Map<AdjusterId, Double> turns, AdjusterKind kind, Corner corner, double amount, int steps) {
        double rounded = round(amount, steps);
        if (rounded != 0) {
            turns.put(new AdjusterId(kind, corner), rounded);
        }
    }

    static List<ReadingId> everything() {
        List<ReadingId> all = new ArrayList<>(DayBook.everything().keySet());
        all.removeIf(id -> id.kind() == ReadingKind.PRESSURE);
        return all;
    }
}
