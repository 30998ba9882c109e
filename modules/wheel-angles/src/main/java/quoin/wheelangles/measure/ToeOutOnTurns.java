package quoin.wheelangles.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.TurnToeOut;
import quoin.quantities.Dimension;

/** How much more the inner front wheel steers than the outer one, to both sides. */
@Messages({
    "turns.title=Toe-out on turns",
    "turns.signs=Front wheels on turn plates at zero straight ahead. Steer until the outer wheel stands at 10°, read the inner one; then the other way. "
            + "Plus: the inner wheel steers more.",
    "turns.caution=Wheels turn on plates: car chocked, hands out of the rim.",
    "turns.table=Plates from straight ahead, without a sign", "# {0} - corner", "turns.leftWheel={0} plate",
    "# {0} - corner", "turns.rightWheel={0} plate",
    "turns.toLeft=Steered left", "turns.toRight=Steered right", "turns.car=The car",
    "turns.track=Between the steering axes, or track",
    "turns.left=Left turn toe-out", "turns.right=Right turn toe-out",
    "turns.ackermannLeft=Of Ackermann, left turn", "turns.ackermannRight=Of Ackermann, right turn",
    "# {0} - angle", "turns.mirror=left and right turn differ by {0} at the same outer angle: the rack is off centre or an arm is bent",
    "turns.same=steer both ways to the same outer angle, so that left and right can be compared"})
final class ToeOutOnTurns implements Method {

    private static final double SAME_OUTER_DEG = 0.5;
    private static final double MIRROR_DEG = 0.5;

    @Override
    public String id() {
        return "turn-toe-out";
    }

    @Override
    public String title() {
        return Bundle.turns_title();
    }

    @Override
    public String signs() {
        return Bundle.turns_signs();
    }

    @Override
    public String caution() {
        return Bundle.turns_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of();
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        return List.of(Table.of(Bundle.turns_table(), List.of(Bundle.turns_leftWheel(Corner.LF.words()),
                Bundle.turns_rightWheel(Corner.RF.words())),
                turn(ReadingId.LEFT, Bundle.turns_toLeft()), turn(ReadingId.RIGHT, Bundle.turns_toRight())),
                Table.of(Bundle.turns_car(), List.of(),
                        Table.Line.of(Bundle.turns_track(), Field.known("track", Bundle.turns_track(), Dimension.LENGTH, setting.trackMm(Axle.FRONT))),
                        Table.Line.of(Bundle.common_wheelbase(), Field.known("wheelbase", Bundle.common_wheelbase(), Dimension.LENGTH,
                                setting.car().wheelbaseMm()))));
    }

    private static Table.Line turn(String side, String name) {
        return Table.Line.of(name, Field.read(side + ".LF", Common.name(name, Bundle.turns_leftWheel(Corner.LF.words())),
                Instrument.TURN_PLATE),
                Field.read(side + ".RF", Common.name(name, Bundle.turns_rightWheel(Corner.RF.words())), Instrument.TURN_PLATE));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        boolean left = figures.any("left.LF", "left.RF");
        boolean right = figures.any("right.LF", "right.RF");
        if (!left && !right) {
            throw new Figures.MissingFigure("left.LF");
        }
        Outcome.Builder to = new Outcome.Builder();
        OptionalDouble toLeft = left ? turn(to, figures, ReadingId.LEFT, "LF", "RF") : OptionalDouble.empty();
        OptionalDouble toRight = right ? turn(to, figures, ReadingId.RIGHT, "RF", "LF") : OptionalDouble.empty();
        if (toLeft.isPresent() && toRight.isPresent()) {
            double difference = Math.abs(toLeft.getAsDouble() - toRight.getAsDouble());
            if (Math.abs(figures.get("left.RF") - figures.get("right.LF")) > SAME_OUTER_DEG) {
                to.hints(Bundle.turns_same());
            } else if (difference > MIRROR_DEG) {
                to.warns(Bundle.turns_mirror(figures.wording().deg(difference)));
            }
        }
        return to.build();
    }

    private static OptionalDouble turn(Outcome.Builder to, Figures figures, String side, String inner, String outer) {
        double in = Checked.steer(side + "." + inner, figures.get(side + "." + inner));
        double out = Checked.steer(side + "." + outer, figures.get(side + "." + outer));
        TurnToeOut turn = new TurnToeOut(in, out);
        double share = Figures.compute(() -> turn.ackermannPercent(figures.get("track"), figures.get("wheelbase")),
                field -> field.replace("_mm", ""));
        boolean isLeft = side.equals(ReadingId.LEFT);
        to.add(Outcome.Result.reading(isLeft ? Bundle.turns_left() : Bundle.turns_right(), new ReadingId(ReadingKind.TURN_TOE_OUT, side),
                turn.toeOutDeg(), 0));
        to.add(new Outcome.Result(isLeft ? Bundle.turns_ackermannLeft() : Bundle.turns_ackermannRight(), Optional.empty(),
                Dimension.PERCENT, share, 0));
        return OptionalDouble.of(turn.toeOutDeg());
    }
}
