package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.mechanics.StringToe;
import quoin.mechanics.WheelAngles;

/** Toe of four wheels from strings. */
final class StringToeCalculation implements Calculation {
    @Override
    public String name() {
        return "string-toe";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        Fields left = in.object("left");
        Fields right = in.object("right");
        PerCorner<StringToe.Gaps> gaps = PerCorner.of(corner -> gaps(corner.isLeft() ? left : right, corner));
        StringToe toe = new StringToe(gaps, new PerAxle<>(in.number("trackFront_mm"), in.number("trackRear_mm")),
                new StringToe.Sides(in.number("wheelbaseLeft_mm"), in.number("wheelbaseRight_mm")),
                new PerAxle<>(in.number("rimChordFront_mm"), in.number("rimChordRear_mm")));
        return switch (in.text("strings")) {
            case "independent" -> () -> independent(toe);
            case "parallelPair" -> () -> parallelPair(toe);
            default -> throw new RefusedException(in.path("strings"), "must be independent or parallelPair");
        };
    }

    private static StringToe.Gaps gaps(Fields side, Corner corner) {
        String wheel = corner.isFront() ? "frontWheel" : "rearWheel";
        return new StringToe.Gaps(side.number(wheel + "FrontEdge_mm"), side.number(wheel + "RearEdge_mm"));
    }

    private static ObjectNode independent(StringToe toe) {
        StringToe.Result result = toe.independent();
        return result(toe, result.toeInDeg()).put("leftStringSplayOutboardToFront_deg", result.splayDeg().left())
                .put("rightStringSplayOutboardToFront_deg", result.splayDeg().right());
    }

    private static ObjectNode parallelPair(StringToe toe) {
        StringToe.Result result = toe.parallelPair();
        return result(toe, result.toeInDeg()).put("stringYawRelativeToCar_deg", result.splayDeg().left());
    }

    private static ObjectNode result(StringToe toe, PerCorner<Double> toeIn) {
        double thrust = WheelAngles.thrustAngleDeg(toeIn);
        ObjectNode node = Results.object();
        node.set("toeIn_deg", Results.perCorner(toeIn));
        node.set("rimToeIn_mm", Results.perCorner(PerCorner.of(
                corner -> WheelAngles.toeMm(toeIn.get(corner), toe.chordMm().get(corner.axle())))));
        PerAxle<Double> total = WheelAngles.totalToeDeg(toeIn);
        node.put("totalToeFront_deg", total.front()).put("totalToeRear_deg", total.rear());
        node.put("thrustAngle_deg_positiveLeft", thrust);
        node.set("toeInRelativeToThrustLine_deg", Results.perCorner(PerCorner.of(
                corner -> toeIn.get(corner) + (corner.isLeft() ? thrust : -thrust))));
        return node.put("setback_mm_positiveRightFrontBehind", toe.setbackMm())
                .put("setbackAngle_deg", WheelAngles.setbackDeg(toe.setbackMm(), toe.trackMm().front()));
    }
}
