package quoin.wheelangles.measure;

import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.WheelAngles;

/** What several ways of measuring share. */
@Messages({
    "# {0} - wheel", "# {1} - place", "common.field={0}, {1}",
    "common.front=Front axle", "common.rear=Rear axle", "common.left=Left", "common.right=Right",
    "common.track=Track at the rims", "common.chord=Chord of the rim",
    "common.wheelbase=Wheelbase",
    "common.half=½ turn later", "common.now=Now", "common.later=½ turn later",
    "# {0} - wheel", "common.toe={0} toe", "# {0} - wheel", "common.camber={0} camber",
    "common.frontTotal=Front total", "common.rearTotal=Rear total", "common.thrust=Thrust, + left",
    "# {0} - angle", "common.thrustLeft=the rear axle drives {0} to the left of the centre line",
    "# {0} - angle", "common.thrustRight=the rear axle drives {0} to the right of the centre line",
    "# {0} - LF angle", "# {1} - RF angle", "# {2} - first corner", "# {3} - second corner", "common.toThrustLine=from the thrust line the front wheels toe {0} ({2}) and {1} ({3})",
    "# {0} - wheel", "# {1} - angle", "common.runOut={0} differs by {1} half a turn later, which is run-out of the rim; the mean counts"})
final class Common {

    /** Run-out beyond this is worth a word, deg. */
    private static final double RUN_OUT_DEG = 0.05;
    private static final double THRUST_DEG = 0.005;

    private Common() {
    }

    static String axle(Axle axle) {
        return axle == Axle.FRONT ? Bundle.common_front() : Bundle.common_rear();
    }

    static String name(Object wheel, String place) {
        return Bundle.common_field(wheel, place);
    }

    static ReadingId toe(Corner corner) {
        return ReadingId.of(ReadingKind.TOE, corner);
    }

    /** Mean of a figure and its repeat half a wheel turn later, which takes the rim's run-out away. */
    static double mean(double now, OptionalDouble later) {
        return later.isPresent() ? (now + later.getAsDouble()) / 2 : now;
    }

    static void runOut(Outcome.Builder to, Wording say, Object wheel, double nowDeg, double laterDeg) {
        if (Math.abs(nowDeg - laterDeg) > RUN_OUT_DEG) {
            to.hints(Bundle.common_runOut(wheel, say.deg(Math.abs(nowDeg - laterDeg))));
        }
    }

    /** Totals and thrust angle of four toes. */
    static void totals(Outcome.Builder to, Wording say, Setting setting, PerCorner<Double> toeDeg) {
        double thrust = WheelAngles.thrustAngleDeg(toeDeg);
        to.add(Outcome.Result.angle(Bundle.common_frontTotal(), WheelAngles.totalToeDeg(toeDeg).front(), setting.chordMm(Axle.FRONT)));
        to.add(Outcome.Result.angle(Bundle.common_rearTotal(), WheelAngles.totalToeDeg(toeDeg).rear(), setting.chordMm(Axle.REAR)));
        to.add(Outcome.Result.angle(Bundle.common_thrust(), thrust, 0));
        if (Math.abs(thrust) >= THRUST_DEG) {
            String size = say.deg(Math.abs(thrust));
            PerCorner<Double> line = WheelAngles.toeToThrustLineDeg(toeDeg);
            to.says(thrust > 0 ? Bundle.common_thrustLeft(size) : Bundle.common_thrustRight(size));
            to.hints(Bundle.common_toThrustLine(say.signedDeg(line.lf()), say.signedDeg(line.rf()), Corner.LF.words(),
                    Corner.RF.words()));
        }
    }
}
