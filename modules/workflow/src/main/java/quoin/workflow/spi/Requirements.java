package quoin.workflow.spi;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.logbook.Conditions;

/** The conditions that several stages ask for, with their cautions (trade practice). */
public final class Requirements {

    private Requirements() {
    }

    public static Requirement sound() {
        return new Requirement(Conditions.SOUND, Conditions.YES, "Check the car for play, run-out and bent or cracked parts",
                Optional.of("Stands under the frame, jack left as a second support, shake test before going under; never under a"
                        + " car on a jack")).asLasting();
    }

    /** Fuel as decided for the load case, recorded in kg. */
    public static Requirement fuelKnown() {
        return new Requirement(Conditions.FUEL, "", "Fill to the fuel of the load case and record it in kg", Optional.empty())
                .asLasting();
    }

    public static Requirement pressuresSet() {
        return new Requirement(Conditions.PRESSURES, Conditions.SET, "Set the tyre pressures to hot running values, equal side to side",
                Optional.empty()).asLasting();
    }

    public static Requirement padsLevelled() {
        return new Requirement(Conditions.PADS, Conditions.LEVELLED, "Shim the four pad tops into one plane",
                Optional.of("Raised pads need end lips; hard shims only, never wood or cardboard")).asLasting();
    }

    public static Requirement scalesZeroed() {
        return new Requirement(Conditions.SCALES, Conditions.ZEROED, "Zero the scales with the pads empty",
                Optional.of("Nothing may lie on a pad: no shim, no spanner")).asLasting();
    }

    public static Requirement barOff(Axle axle) {
        String end = axle == Axle.FRONT ? "front" : "rear";
        return new Requirement(Conditions.bar(axle), Conditions.DISCONNECTED, "Take one link off the " + end + " bar",
                Optional.of("Put the link on the list of loosened parts"));
    }

    public static Requirement dampersSoft() {
        return new Requirement(Conditions.DAMPERS, Conditions.SOFT, "Set the dampers to full soft",
                Optional.of("Write the clicks down first"));
    }

    public static Requirement brakesFree() {
        return new Requirement(Conditions.BRAKES, Conditions.FREE, "Brakes off, gearbox in neutral",
                Optional.of("The car can roll: stop blocks 10 mm clear of the tyres"));
    }

    public static Requirement steeringLocked() {
        return new Requirement(Conditions.STEERING, Conditions.LOCKED, "Lock the steering with the rack centred",
                Optional.of("Put the lock on the list of what must come out again"));
    }

    public static Requirement driverIn() {
        return new Requirement(Conditions.DRIVER, Conditions.IN, "Driver, or ballast for him, in the seat and still",
                Optional.of("Never in the seat while the car is on a jack"));
    }

    /** Settled since whatever was last turned, jacked, shimmed or driven. */
    public static Requirement settled() {
        return new Requirement(Conditions.SETTLED, Conditions.YES, "Settle the car: bounce each end three times, roll it back and forth",
                Optional.of("Never trust the first reading after a jack"));
    }

    /** What every height, weight and angle is taken in; the bars only where the car has them. */
    public static List<Requirement> forReading(Car car) {
        List<Requirement> all = new ArrayList<>(List.of(padsLevelled(), pressuresSet()));
        all.addAll(barsOff(car));
        all.addAll(List.of(dampersSoft(), brakesFree(), driverIn(), settled()));
        return List.copyOf(all);
    }

    /** One bar off for each axle that has one. */
    public static List<Requirement> barsOff(Car car) {
        List<Requirement> all = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            if (car.axles().get(axle).bar().isPresent()) {
                all.add(barOff(axle));
            }
        }
        return List.copyOf(all);
    }
}
