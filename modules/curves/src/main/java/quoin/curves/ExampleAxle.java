package quoin.curves;

import java.util.Map;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.PerAxle;
import quoin.car.SuspensionChoice;

/** Made-up hard points of a small single-seater, to show what the curves look like before one's own are measured. */
final class ExampleAxle {

    private static final SuspensionChoice WISHBONES = new SuspensionChoice("double-wishbone", Map.ofEntries(
            Map.entry("wheelCentre", "0 720 280"), Map.entry("loadedRadius_mm", "278"),
            Map.entry("staticCamber_deg", "-1.5"), Map.entry("staticToe_deg", "0.1"),
            Map.entry("links.upper_front.inboard", "130 330 372"), Map.entry("links.upper_front.outboard", "-14 640 405"),
            Map.entry("links.upper_rear.inboard", "-150 330 364"), Map.entry("links.upper_rear.outboard", "-14 640 405"),
            Map.entry("links.lower_front.inboard", "160 250 168"), Map.entry("links.lower_front.outboard", "8 686 158"),
            Map.entry("links.lower_rear.inboard", "-160 250 164"), Map.entry("links.lower_rear.outboard", "8 686 158"),
            Map.entry("links.tie.inboard", "92 262 204"), Map.entry("links.tie.outboard", "98 674 196"),
            Map.entry("coilOver.body", "10 372 520"), Map.entry("coilOver.uprightOrArm", "6 560 176"),
            Map.entry("coilOverOn", "lowerArm")));

    private ExampleAxle() {
    }

    /** The car with the example in place of one axle's suspension. */
    static Car in(Car car, Axle axle) {
        AxleSetup own = car.axles().get(axle);
        AxleSetup example = new AxleSetup(own.trackMm(), own.bar(), WISHBONES);
        PerAxle<AxleSetup> axles = axle == Axle.FRONT ? new PerAxle<>(example, car.axles().rear())
                : new PerAxle<>(car.axles().front(), example);
        return new Car(car.id(), car.name(), car.wheelbaseMm(), axles, car.corners(), car.masses(), car.heightPoints(),
                car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
    }
}
