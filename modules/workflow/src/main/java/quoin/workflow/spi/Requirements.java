package quoin.workflow.spi;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.logbook.Conditions;
import quoin.quantities.Texts;

/** The conditions that several stages ask for, with their cautions (trade practice). */
public final class Requirements {

    private static final Texts TEXTS = Texts.of(Requirements.class);

    private Requirements() {
    }

    public static Requirement sound() {
        return new Requirement(Conditions.SOUND, Conditions.YES, TEXTS.say("sound"),
                Optional.of(TEXTS.say("sound.caution"))).asLasting();
    }

    /** Fuel as decided for the load case, recorded in kg. */
    public static Requirement fuelKnown() {
        return new Requirement(Conditions.FUEL, "", TEXTS.say("fuel"), Optional.empty())
                .asLasting();
    }

    public static Requirement pressuresSet() {
        return new Requirement(Conditions.PRESSURES, Conditions.SET, TEXTS.say("pressures"),
                Optional.empty()).asLasting();
    }

    public static Requirement padsLevelled() {
        return new Requirement(Conditions.PADS, Conditions.LEVELLED, TEXTS.say("pads"),
                Optional.of(TEXTS.say("pads.caution"))).asLasting();
    }

    public static Requirement scalesZeroed() {
        return new Requirement(Conditions.SCALES, Conditions.ZEROED, TEXTS.say("scales"),
                Optional.of(TEXTS.say("scales.caution"))).asLasting();
    }

    public static Requirement barOff(Axle axle) {
        return new Requirement(Conditions.bar(axle), Conditions.DISCONNECTED, TEXTS.say("bar." + axle),
                Optional.of(TEXTS.say("bar.caution")));
    }

    public static Requirement dampersSoft() {
        return new Requirement(Conditions.DAMPERS, Conditions.SOFT, TEXTS.say("dampers"),
                Optional.of(TEXTS.say("dampers.caution")));
    }

    public static Requirement brakesFree() {
        return new Requirement(Conditions.BRAKES, Conditions.FREE, TEXTS.say("brakes"),
                Optional.of(TEXTS.say("brakes.caution")));
    }

    public static Requirement steeringLocked() {
        return new Requirement(Conditions.STEERING, Conditions.LOCKED, TEXTS.say("steering"),
                Optional.of(TEXTS.say("steering.caution")));
    }

    public static Requirement driverIn() {
        return new Requirement(Conditions.DRIVER, Conditions.IN, TEXTS.say("driver"),
                Optional.of(TEXTS.say("driver.caution")));
    }

    /** Settled since whatever was last turned, jacked, shimmed or driven. */
    public static Requirement settled() {
        return new Requirement(Conditions.SETTLED, Conditions.YES, TEXTS.say("settled"),
                Optional.of(TEXTS.say("settled.caution")));
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
