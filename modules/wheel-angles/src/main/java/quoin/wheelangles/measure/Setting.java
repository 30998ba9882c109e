package quoin.wheelangles.measure;

import java.util.OptionalDouble;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;

/** What the day knows that the forms begin with. */
public final class Setting {

    private final Day day;
    private final AssumedCar assumed;

    public Setting(Day day) {
        this.day = day;
        this.assumed = Assumptions.complete(day.car());
    }

    Car car() {
        return day.car();
    }

    /** Distance between the rim edges of an axle where toe is read, mm: mean of its two wheels. */
    double chordMm(Axle axle) {
        return (chordMm(axle.left()) + chordMm(axle.right())) / 2;
    }

    double chordMm(Corner corner) {
        return assumed.corners().get(corner).rimChordMm();
    }

    double trackMm(Axle axle) {
        return car().trackMm(axle);
    }

    /** Wheelbase of a side as last measured, else the car's, mm. */
    double wheelbaseMm(String side) {
        return last(new ReadingId(ReadingKind.WHEELBASE, side)).orElse(car().wheelbaseMm());
    }

    /** Toe as last read, else 0, deg. */
    double toeDeg(Corner corner) {
        return last(ReadingId.of(ReadingKind.TOE, corner)).orElse(0);
    }

    OptionalDouble padHeightMm(Corner corner) {
        return last(ReadingId.of(ReadingKind.PAD_HEIGHT, corner));
    }

    private OptionalDouble last(ReadingId id) {
        return day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty());
    }
}
