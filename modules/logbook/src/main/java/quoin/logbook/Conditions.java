package quoin.logbook;

import java.util.Optional;
import java.util.stream.Stream;
import quoin.car.Axle;
import quoin.car.Corner;

/**
 * Keys and values of the conditions that the order of work knows. A stage may record others under keys of its own; they
 * are kept all the same.
 */
public final class Conditions {

    /** Driver or ballast in the seat: {@link #IN} or {@link #OUT}. */
    public static final String DRIVER = "driver";
    /** Fuel on board: the mass in kg as a plain number. */
    public static final String FUEL = "fuel";
    /** Dampers: {@link #SOFT} or {@link #RUNNING}. */
    public static final String DAMPERS = "dampers";
    /** Steering: {@link #LOCKED} or {@link #FREE}. */
    public static final String STEERING = "steering";
    /** Brakes and gearbox: {@link #FREE} or {@link #ON}. */
    public static final String BRAKES = "brakes";
    /** Pads: {@link #LEVELLED} when surveyed into one plane, {@link #MOVED} when touched. */
    public static final String PADS = "pads";
    /** Scales: {@link #ZEROED}. */
    public static final String SCALES = "scales";
    /** Name of the garage place whose pads the car stands on. */
    public static final String PLACE = "place";
    /** Pressures set: {@link #SET}. */
    public static final String PRESSURES = "pressures";
    /** Car settled on its tyres: {@link #YES}, or {@link #NO} after jacking, steering or driving. */
    public static final String SETTLED = "settled";
    /** The car is sound: play, run-out and nuts looked at: {@link #YES}. */
    public static final String SOUND = "sound";
    /** Nuts loosened today tightened again: {@link #YES} or {@link #NO}. */
    public static final String LOCKNUTS = "locknuts";
    /** Mass moved or ballast added: what was done, in words. */
    public static final String BALLAST = "ballast";
    /** What the day is for: {@link #WHOLE}, or ids of stages with commas between; the words say it as the racer does. */
    public static final String PART = "part";
    /** Who sits in the seat, as the load case names him, or what stands in for him. */
    public static final String DRIVER_NAME = "driver-name";
    /** Tyre set fitted, in words. */
    public static final String TYRES = "tyres";

    /** Marks a day on which the practice car gave the readings: the seed of its noise. */
    public static final String REHEARSAL = "rehearsal";

    public static final String WHOLE = "whole";
    public static final String IN = "in";
    public static final String OUT = "out";
    public static final String SOFT = "soft";
    public static final String RUNNING = "running";
    public static final String LOCKED = "locked";
    public static final String FREE = "free";
    public static final String ON = "on";
    public static final String LEVELLED = "levelled";
    public static final String MOVED = "moved";
    public static final String ZEROED = "zeroed";
    public static final String SET = "set";
    public static final String YES = "yes";
    public static final String NO = "no";
    public static final String CONNECTED = "connected";
    public static final String DISCONNECTED = "disconnected";

    private Conditions() {
    }

    /** Anti-roll bar of an axle: {@link #CONNECTED} or {@link #DISCONNECTED}. */
    public static String bar(Axle axle) {
        return axle == Axle.FRONT ? "front-bar" : "rear-bar";
    }

    /** Tyre pressure of a corner: bar gauge as a plain number. */
    public static String pressure(Corner corner) {
        return "pressure." + corner;
    }

    /** The corner whose tyre pressure a key is of; empty for any other key. */
    public static Optional<Corner> cornerOfPressure(String key) {
        return Stream.of(Corner.values()).filter(c -> pressure(c).equals(key)).findFirst();
    }

    /** True where the value is a plain number: the fuel, or a tyre pressure. */
    public static boolean isFigure(String key) {
        return key.equals(FUEL) || cornerOfPressure(key).isPresent();
    }
}
