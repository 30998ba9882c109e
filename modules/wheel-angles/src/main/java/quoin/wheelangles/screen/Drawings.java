package quoin.wheelangles.screen;

import java.util.function.Consumer;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.wheelangles.screen.Sketch.Place;

/** What each way of measuring looks like from above or from behind; angles are drawn larger than they are. */
@Messages({
    "drawing.front=front", "drawing.behind=seen from behind", "drawing.above=seen from above", "drawing.cord=cord",
    "drawing.a=a", "drawing.b=b", "drawing.cordPlus=plus = in: a larger than b", "drawing.platePlus=plus = in: rear wider than front",
    "drawing.frontTape=front", "drawing.rearTape=rear", "drawing.plate=plate", "drawing.in=+ in", "drawing.centre=centre line",
    "drawing.topOut=+ top outboard", "drawing.gauge=gauge", "drawing.pad=pad", "drawing.slope=+ left side higher",
    "drawing.top=top", "drawing.bottom=bottom", "drawing.chord=chord", "drawing.plumbPlus=plus: bottom larger than top",
    "drawing.plateLeft=left", "drawing.plateRight=right", "drawing.caster=+ caster", "drawing.kpi=+ KPI", "drawing.rearward=rearward",
    "drawing.inboard=inboard", "# {0} - corner", "drawing.fromSide={0} from its left",
    "# {0} - corner", "drawing.fromBehind={0} from behind", "# {0} - corner", "drawing.fromAbove={0} from above",
    "drawing.setbackPlus=+ left ahead", "drawing.inner=inner", "drawing.outer=outer", "drawing.leftTurn=steered left"})
final class Drawings {

    private Drawings() {
    }

    /** The drawing of a way of measuring; nothing for one that has none. */
    static Consumer<Sketch> of(String method) {
        return switch (method) {
            case "string-toe" -> Drawings::cords;
            case "plate-toe" -> Drawings::plates;
            case "angle-toe" -> Drawings::angles;
            case "gauge-camber" -> Drawings::gauge;
            case "plumb-camber" -> Drawings::plumb;
            case "caster-sweep" -> Drawings::sweep;
            case "diagonals" -> Drawings::diagonals;
            case "bump-steer" -> Drawings::dials;
            case "turn-toe-out" -> Drawings::turns;
            default -> s -> { };
        };
    }

    private static void frontArrow(Sketch s, double x, double y) {
        s.arrow(x, y + 8, x, y).text(x, y + 3.5, Bundle.drawing_front(), Place.RIGHT);
    }

    private static void cords(Sketch s) {
        s.guide(50, 2, 50, 60);
        s.line(6, 3, 94, 3).line(6, 59, 94, 59);
        s.line(12, 3, 12, 59).line(86, 3, 90, 59);
        s.text(12, 31, Bundle.drawing_cord(), Place.ON).text(88, 31, Bundle.drawing_cord(), Place.ON);
        s.line(32, 15, 68, 15).line(32, 47, 68, 47);
        wheel(s, "LF", 32, 15, 6, true);
        wheel(s, "RF", 68, 15, -6, false);
        wheel(s, "LR", 32, 47, 4, true);
        wheel(s, "RR", 68, 47, -4, false);
        frontArrow(s, 50, 4.5);
        s.text(50, 31, Bundle.drawing_cordPlus(), Place.ON);
    }

    /** A wheel with the gaps at its front and rear edge. */
    private static void wheel(Sketch s, String name, double x, double y, double turnedDeg, boolean left) {
        s.box(x, y, 6, 18, turnedDeg, true);
        double side = left ? -3 : 3;
        double lean = 8 * Math.sin(Math.toRadians(turnedDeg));
        double cord = left ? 12 : y < 30 ? 86.9 : 89.1;
        s.measure(name + ".front", cord, y - 7.5, x + side + lean, y - 7.5, Bundle.drawing_a(), Place.BELOW);
        s.measure(name + ".rear", cord, y + 7.5, x + side - lean, y + 7.5, Bundle.drawing_b(), Place.ABOVE);
        s.text(x, y, Corner.parse(name).words(), Place.ON);
    }

    private static void plates(Sketch s) {
        s.guide(50, 2, 50, 60);
        s.line(26, 31, 74, 31);
        s.box(26, 31, 7, 30, 7, true).box(74, 31, 7, 30, -7, true);
        s.thick(24.5, 5, 17.5, 57).thick(75.5, 5, 82.5, 57);
        s.measure("front", 24.5, 6, 75.5, 6, Bundle.drawing_frontTape(), Place.ON);
        s.measure("rear", 17.7, 56, 82.3, 56, Bundle.drawing_rearTape(), Place.ON);
        s.measure("plate", 13.5, 5, 8, 56, Bundle.drawing_plate(), Place.ON);
        frontArrow(s, 88, 8);
        s.text(50, 42, Bundle.drawing_platePlus(), Place.ON);
    }

    private static void angles(Sketch s) {
        s.guide(50, 2, 50, 60).text(50, 52, Bundle.drawing_centre(), Place.ON);
        s.line(26, 31, 74, 31);
        s.box(26, 31, 7, 30, 9, true).box(74, 31, 7, 30, -9, true);
        s.guide(26, 4, 26, 58).guide(74, 4, 74, 58);
        s.angle("LF.toe", 26, 31, 22, 0, 9, "", Place.RIGHT).text(31, 8, Bundle.drawing_in(), Place.RIGHT);
        s.angle("RF.toe", 74, 31, 22, 0, -9, "", Place.LEFT).text(69, 8, Bundle.drawing_in(), Place.LEFT);
        frontArrow(s, 50, 14);
    }

    private static void gauge(Sketch s) {
        s.text(50, 16, Bundle.drawing_behind(), Place.BELOW);
        s.line(24, 30, 76, 30);
        s.guide(20, 4, 20, 56).guide(80, 4, 80, 56);
        s.box(20, 30, 9, 44, -9, true).box(80, 30, 9, 44, 9, true);
        s.thick(11.8, 9, 18.4, 51).box(11.2, 28, 4.5, 10, -9, true).text(9, 34, Bundle.drawing_gauge(), Place.BELOW);
        s.angle("LF.camber", 20, 52, 46, 0, -9, "", Place.ABOVE).text(22, 7, Bundle.drawing_topOut(), Place.RIGHT);
        s.angle("RF.camber", 80, 52, 46, 0, 9, "", Place.ABOVE);
        s.floor(30, 51, 70, 57).guide(30, 57, 70, 57);
        s.text(50, 52, Bundle.drawing_slope(), Place.ABOVE);
    }

    private static void plumb(Sketch s) {
        s.text(98, 20, Bundle.drawing_behind(), Place.LEFT);
        s.line(50, 31, 92, 31);
        s.box(46, 31, 14, 46, -10, true);
        s.line(18, 2, 18, 58).dot(18, 58);
        s.measure("LF.top", 18, 12, 36.2, 12, Bundle.drawing_top(), Place.ABOVE);
        s.measure("LF.bottom", 18, 49, 42.7, 49, Bundle.drawing_bottom(), Place.BELOW);
        s.measure("chord", 54, 10.5, 60.5, 47.5, Bundle.drawing_chord(), Place.ON);
        s.floor(34, 55, 92, 55);
        s.guide(46, 2, 46, 56).angle("", 46, 54, 50, 0, -10, "", Place.RIGHT).text(47, 4, Bundle.drawing_topOut(), Place.RIGHT);
        s.text(98, 42, Bundle.drawing_plumbPlus(), Place.LEFT);
    }

    private static void sweep(Sketch s) {
        s.text(20, 2, Bundle.drawing_fromAbove(Corner.LF.words()), Place.BELOW);
        s.circle(20, 34, 14);
        s.box(20, 34, 6, 24, -20, false).box(20, 34, 6, 24, 20, false).box(20, 34, 6, 24, 0, true);
        s.guide(20, 14, 20, 58);
        s.angle("LF.leftPlate", 20, 34, 17, 0, -20, "", Place.ABOVE).text(15, 15, Bundle.drawing_plateLeft(), Place.LEFT);
        s.angle("LF.rightPlate", 20, 34, 17, 0, 20, "", Place.ABOVE).text(25, 15, Bundle.drawing_plateRight(), Place.RIGHT);
        s.text(54, 2, Bundle.drawing_fromSide(Corner.LF.words()), Place.BELOW);
        s.circle(54, 38, 13).guide(54, 14, 54, 56).line(49, 58, 60.5, 14);
        s.angle("", 54, 38, 20, 0, 15, "", Place.ABOVE).text(54, 11, Bundle.drawing_caster(), Place.ON);
        s.arrow(46, 58, 40, 58).text(40, 58, Bundle.drawing_front(), Place.LEFT);
        s.text(85, 2, Bundle.drawing_fromBehind(Corner.LF.words()), Place.BELOW);
        s.box(80, 38, 6, 26, 0, true).guide(86, 14, 86, 56).line(81, 57, 90, 14);
        s.angle("", 86, 38, 20, 0, 11, "", Place.ABOVE).text(86, 11, Bundle.drawing_kpi(), Place.ON);
        s.floor(70, 52, 98, 52);
    }

    private static void diagonals(Sketch s) {
        s.box(32, 14, 5, 15, 0, false).box(72, 19, 5, 15, 0, false).box(32, 53, 5, 14, 0, false).box(72, 53, 5, 14, 0, false);
        s.measure("diagonal.LF-RR", 32, 14, 72, 53, "", Place.ON).measure("diagonal.RF-LR", 72, 19, 32, 53, "", Place.ON);
        s.measure("track.FRONT", 32, 14, 72, 19, "", Place.ON).measure("track.REAR", 32, 53, 72, 53, "", Place.ON);
        s.measure("wheelbase.left", 32, 14, 32, 53, "", Place.ON).measure("wheelbase.right", 72, 19, 72, 53, "", Place.ON);
        s.text(36, 9, Corner.LF.words(), Place.RIGHT).text(76, 19, Corner.RF.words(), Place.RIGHT);
        s.text(27, 55, Corner.LR.words(), Place.LEFT).text(76, 55, Corner.RR.words(), Place.RIGHT);
        s.guide(14, 19, 68, 19).guide(14, 14, 30, 14);
        s.arrow(20, 25, 20, 19.5).arrow(20, 8, 20, 13.5).text(20, 27, Bundle.drawing_setbackPlus(), Place.BELOW);
        frontArrow(s, 52, 3);
    }

    private static void dials(Sketch s) {
        s.text(4, 3, Bundle.drawing_above(), Place.RIGHT);
        s.line(34, 31, 46, 31).thick(30, 10, 34, 52);
        s.line(8, 14, 29.5, 14).line(8, 48, 32.8, 48);
        s.circle(8, 14, 5).circle(8, 48, 5);
        s.text(19, 14, Bundle.drawing_frontTape(), Place.ABOVE).text(19, 48, Bundle.drawing_rearTape(), Place.BELOW);
        s.measure("spacing", 20, 15, 20, 47, "", Place.RIGHT);
        frontArrow(s, 44, 4);
    }

    private static void turns(Sketch s) {
        s.guide(50, 4, 50, 60);
        s.line(26, 34, 74, 34);
        s.box(26, 34, 7, 26, -30, true).box(74, 34, 7, 26, -20, true);
        s.guide(26, 6, 26, 58).guide(74, 6, 74, 58);
        s.angle("left.LF", 26, 34, 22, 0, -30, Bundle.drawing_inner(), Place.ABOVE);
        s.angle("left.RF", 74, 34, 22, 0, -20, Bundle.drawing_outer(), Place.ABOVE);
        s.text(50, 52, Bundle.drawing_leftTurn(), Place.ON);
        frontArrow(s, 50, 10);
    }
}
