package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.mechanics.StringToe;
import quoin.mechanics.WheelAngles;
import quoin.quantities.Dimension;

/** Toe from two cords along the car; their skew is taken out by arithmetic instead of by moving the bars. */
@Messages({
    "cords.title=Toe by cords",
    "cords.signs=Rule from the cord to the front and to the rear edge of each rim, at hub height. "
            + "Plus is toe-in: the gap at the front edge is the larger one.",
    "cords.caution=Wheels on slip plates, steering held straight. Cords are at shin height: flag them, and take them down before climbing in.",
    "cords.choice=The cords stand", "cords.independent=each at its own angle; tracks known",
    "cords.parallel=parallel to each other; tracks not needed", "cords.square=square to the car; nothing to correct",
    "cords.gaps=Gaps from the cord to the rim", "cords.frontEdge=Front edge", "cords.rearEdge=Rear edge",
    "cords.frontLater=Front edge, ½ turn later", "cords.rearLater=Rear edge, ½ turn later",
    "cords.car=The car", "cords.first=Front; left", "cords.second=Rear; right",
    "# {0} - angle", "cords.leftSkew=left cord skew {0}", "# {0} - angle", "cords.rightSkew=right cord skew {0}",
    "# {0} - sentence", "cords.in={0}, closer to the car in front", "# {0} - sentence", "cords.out={0}, farther from the car in front",
    "# {0} - length", "cords.equalGaps=equal gaps would tilt the cords here, as the tracks differ by {0}; the arithmetic allows for it",
    "# {0} - corner", "cords.setback=Setback, + {0} ahead"})
final class CordToe implements Method {

    private static final String CORDS = "cords";
    private static final String INDEPENDENT = "independent";
    private static final String PARALLEL = "parallel";
    private static final String SQUARE = "square";
    private static final double SKEW_DEG = 0.002;

    @Override
    public String id() {
        return "string-toe";
    }

    @Override
    public String title() {
        return Bundle.cords_title();
    }

    @Override
    public String signs() {
        return Bundle.cords_signs();
    }

    @Override
    public String caution() {
        return Bundle.cords_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(Choice.of(CORDS, Bundle.cords_choice(), new Choice.Option(INDEPENDENT, Bundle.cords_independent()),
                new Choice.Option(PARALLEL, Bundle.cords_parallel()), new Choice.Option(SQUARE, Bundle.cords_square())));
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        List<Table.Line> gaps = new ArrayList<>();
        for (Corner corner : setting.car().walkingOrder()) {
            gaps.add(Table.Line.of(corner.words(), gap(corner, ".front", Bundle.cords_frontEdge()), gap(corner, ".rear", Bundle.cords_rearEdge()),
                    gap(corner, ".front2", Bundle.cords_frontLater()), gap(corner, ".rear2", Bundle.cords_rearLater())));
        }
        List<Table.Line> car = new ArrayList<>();
        if (INDEPENDENT.equals(chosen.get(CORDS))) {
            car.add(perAxle("track", Bundle.common_track(), setting.trackMm(Axle.FRONT), setting.trackMm(Axle.REAR)));
        }
        car.add(perAxle("chord", Bundle.common_chord(), setting.chordMm(Axle.FRONT), setting.chordMm(Axle.REAR)));
        if (!SQUARE.equals(chosen.get(CORDS))) {
            car.add(Table.Line.of(Bundle.common_wheelbase(), side(ReadingId.LEFT, Bundle.common_left(), setting),
                    side(ReadingId.RIGHT, Bundle.common_right(), setting)));
        }
        return List.of(new Table(Bundle.cords_gaps(), List.of(Bundle.cords_frontEdge(), Bundle.cords_rearEdge(), Bundle.cords_frontLater(),
                Bundle.cords_rearLater()), gaps), new Table(Bundle.cords_car(), List.of(Bundle.cords_first(), Bundle.cords_second()), car));
    }

    private static Field gap(Corner corner, String edge, String words) {
        return Field.read(corner + edge, Common.name(corner, words), Instrument.RULE);
    }

    private static Table.Line perAxle(String key, String name, double front, double rear) {
        return Table.Line.of(name, Field.known(key + ".FRONT", Common.name(name, Bundle.common_front()), Dimension.LENGTH, front),
                Field.known(key + ".REAR", Common.name(name, Bundle.common_rear()), Dimension.LENGTH, rear));
    }

    private static Field side(String side, String words, Setting setting) {
        return Field.known("wheelbase." + side, Common.name(Bundle.common_wheelbase(), words), Dimension.LENGTH, setting.wheelbaseMm(side));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        Outcome.Builder to = new Outcome.Builder();
        if (figures.is(CORDS, SQUARE)) {
            return square(figures, to);
        }
        PerAxle<Double> track = figures.is(CORDS, PARALLEL) ? new PerAxle<>(figures.setting().trackMm(Axle.FRONT), figures.setting().trackMm(Axle.REAR))
                : new PerAxle<>(figures.get("track.FRONT"), figures.get("track.REAR"));
        StringToe.Sides wheelbase = new StringToe.Sides(figures.get("wheelbase.left"), figures.get("wheelbase.right"));
        PerCorner<StringToe.Gaps> gaps = PerCorner.of(c -> gaps(figures, c));
        StringToe toe = Figures.compute(() -> new StringToe(gaps, track, wheelbase,
                new PerAxle<>(figures.get("chord.FRONT"), figures.get("chord.REAR"))), CordToe::key);
        StringToe.Result result = Figures.compute(figures.is(CORDS, PARALLEL) ? toe::parallelPair : toe::independent, CordToe::key);
        for (Corner corner : figures.setting().car().walkingOrder()) {
            add(to, figures, corner, result.toeInDeg().get(corner));
        }
        Common.totals(to, figures.wording(), figures.setting(), result.toeInDeg());
        to.add(Outcome.Result.angle(Bundle.cords_setback(Corner.LF.words()), WheelAngles.setbackDeg(toe.setbackMm(), track.front()),
                track.front()));
        skew(to, figures, Bundle::cords_leftSkew, result.splayDeg().left());
        skew(to, figures, Bundle::cords_rightSkew, result.splayDeg().right());
        double trackDifference = Math.abs(track.front() - track.rear());
        if (trackDifference > 1 && figures.is(CORDS, INDEPENDENT)) {
            to.hints(Bundle.cords_equalGaps(figures.wording().length(trackDifference)));
        }
        return to.build();
    }

    private static void add(Outcome.Builder to, Figures figures, Corner corner, double toeDeg) {
        double chord = figures.get("chord." + corner.axle());
        to.add(Outcome.Result.reading(Bundle.common_toe(corner.words()), Common.toe(corner), toeDeg, chord));
        if (figures.any(corner + ".front2")) {
            double now = (figures.get(corner + ".front") - figures.get(corner + ".rear")) / chord;
            double later = (figures.get(corner + ".front2") - figures.get(corner + ".rear2")) / chord;
            Common.runOut(to, figures.wording(), corner, Math.toDegrees(now), Math.toDegrees(later));
        }
    }

    private static StringToe.Gaps gaps(Figures figures, Corner corner) {
        double front = figures.get(corner + ".front");
        double rear = figures.get(corner + ".rear");
        if (!figures.any(corner + ".front2", corner + ".rear2")) {
            return new StringToe.Gaps(front, rear);
        }
        return new StringToe.Gaps(Common.mean(front, OptionalDouble.of(figures.get(corner + ".front2"))),
                Common.mean(rear, OptionalDouble.of(figures.get(corner + ".rear2"))));
    }

    /** Cords set square by hand: each wheel by itself, and only those that were read. */
    private Outcome square(Figures figures, Outcome.Builder to) {
        boolean all = true;
        for (Corner corner : figures.setting().car().walkingOrder()) {
            if (figures.any(corner + ".front", corner + ".rear", corner + ".front2", corner + ".rear2")) {
                add(to, figures, corner, toeAlone(figures, corner));
            } else {
                all = false;
            }
        }
        Outcome found = to.build();
        if (found.results().isEmpty()) {
            throw new Figures.MissingFigure(figures.setting().car().walkingOrder().get(0) + ".front");
        }
        if (all) {
            Common.totals(to, figures.wording(), figures.setting(), PerCorner.of(c -> toeAlone(figures, c)));
        }
        return to.build();
    }

    private static double toeAlone(Figures figures, Corner corner) {
        StringToe.Gaps gaps = gaps(figures, corner);
        return Figures.compute(() -> WheelAngles.toeDeg(gaps.frontEdgeMm() - gaps.rearEdgeMm(), figures.get("chord." + corner.axle())),
                field -> field.equals("chord_mm") ? "chord." + corner.axle() : corner + ".front");
    }

    private static void skew(Outcome.Builder to, Figures figures, Function<Object, String> words, double splayDeg) {
        if (Math.abs(splayDeg) >= SKEW_DEG) {
            String sentence = words.apply(figures.wording().fineDeg(Math.abs(splayDeg)));
            to.says(splayDeg > 0 ? Bundle.cords_out(sentence) : Bundle.cords_in(sentence));
        }
    }

    /** "left.frontWheelRearEdge_mm" is LF.rear here. */
    static String key(String field) {
        if (field.contains("Wheel")) {
            String wheel = (field.startsWith("left") ? "L" : "R") + (field.contains("frontWheel") ? "F" : "R");
            return wheel + (field.endsWith("FrontEdge_mm") ? ".front" : ".rear");
        }
        String axle = field.contains("Front") ? ".FRONT" : ".REAR";
        return field.startsWith("track") ? "track" + axle : field.startsWith("rimChord") ? "chord" + axle
                : field.contains("Left") ? "wheelbase.left" : "wheelbase.right";
    }
}
