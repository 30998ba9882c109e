package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.ReadingId;
import quoin.car.Setting;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.quantities.Turns;
import quoin.workflow.Staleness.Effect;

/** What happened to a reading since it was taken, in words: one cause for each adjuster and each condition. */
final class Causes {

    private static final Texts TEXTS = Texts.of(Causes.class);

    /**
     * One cause.
     *
     * @param effect what it does to the reading
     * @param kind   kind of adjuster that was turned; empty = a condition changed
     * @param entry  last entry that tells of it
     * @param small  perch or pushrod work too small to disturb angles for good
     * @param words  "RR perch turned 2 notches after this"
     */
    record Cause(Effect effect, Optional<AdjusterKind> kind, long entry, boolean small, String words) {
    }

    private static final Set<String> BARS = Set.of(Conditions.CONNECTED, Conditions.DISCONNECTED);

    /**
     * What one adjuster or one condition did.
     *
     * @param last   the last event of it
     * @param amount turns or mm of shim in all
     */
    private record Group(Timeline.Event last, double amount) {
        Group and(Group later) {
            return new Group(later.last, amount + later.amount);
        }
    }

    /** What disturbed the readings of a column after an entry, by adjuster or condition, in the order in which each began. */
    private record After(Timeline.Column column, long entry) implements Derivation<Map<Object, Group>> {
        @Override
        public Map<Object, Group> of(Day day) {
            List<Timeline.Event> events = Timeline.of(day).disturbing(column);
            return with(Map.of(), events.subList(Timeline.firstAfter(events, entry), events.size()));
        }

        @Override
        public Map<Object, Group> onward(Day earlier, Map<Object, Group> known, Day day) {
            List<Timeline.Event> events = Timeline.of(day).disturbing(column);
            int from = Math.max(Timeline.of(earlier).disturbing(column).size(), Timeline.firstAfter(events, entry));
            return from == events.size() ? known : with(known, events.subList(from, events.size()));
        }

        private static Map<Object, Group> with(Map<Object, Group> known, List<Timeline.Event> events) {
            Map<Object, Group> groups = new LinkedHashMap<>(known);
            events.forEach(e -> groups.merge(e.adjuster().<Object>map(a -> a).orElse(e.key()), new Group(e, e.amount()), Group::and));
            return groups;
        }
    }

    private final Car car;
    private final Day day;
    private final ExpectedMove expected;

    Causes(Car car, Day day, ExpectedMove expected) {
        this.car = car;
        this.day = day;
        this.expected = expected;
    }

    /** Causes after a figure of a typed reading, in the order in which each began. */
    List<Cause> since(Figure figure, double uncertainty) {
        Map<Object, Group> groups = day.derive(new After(Timeline.Column.of(figure.reading()), figure.entry()));
        if (groups.isEmpty()) {
            return List.of();
        }
        boolean legMoved = Staleness.isAngle(figure.reading()) && largestLegMoveMm(groups) > Staleness.LEG_LIMIT_MM;
        List<Cause> causes = new ArrayList<>();
        groups.values().forEach(g -> causes.add(g.last().adjuster().isPresent()
                ? turned(g, figure.reading(), uncertainty, legMoved) : changed(g.last(), figure)));
        return causes;
    }

    /** Largest net movement of a leg among these events, mm at the wheel. */
    private double largestLegMoveMm(Map<Object, Group> groups) {
        double[] legs = new double[Corner.values().length];
        groups.forEach((key, group) -> {
            if (key instanceof AdjusterId id && id.kind().isSpringLeg()) {
                legs[id.corner().ordinal()] += legMm(car, id, group.amount());
            }
        });
        double largest = 0;
        for (double leg : legs) {
            largest = Math.max(largest, Math.abs(leg));
        }
        return largest;
    }

    /** Movement of the thread over the travel ratio of its spring seat or rod, mm at the wheel (0.75 where it is unknown). */
    static double legMm(Car car, AdjusterId id, double turns) {
        double thread = car.adjuster(id).map(a -> a.setting().mmPerUnit()).orElse(1.5);
        CornerSetup corner = car.corners().get(id.corner());
        OptionalDouble ratio = id.kind() == AdjusterKind.PERCH ? corner.motionRatio() : corner.pushrodRatio();
        return turns * thread / ratio.orElse(0.75);
    }

    private Cause turned(Group group, ReadingId reading, double uncertainty, boolean legMoved) {
        Timeline.Event last = group.last();
        AdjusterId id = last.adjuster().orElseThrow();
        double net = group.amount();
        Effect effect = Staleness.of(last.what(), last.axle(), reading);
        boolean angleAfterLeg = last.what() == Disturbance.SPRING_LEG && Staleness.isAngle(reading);
        String words = turnedWords(id, net);
        if (angleAfterLeg && legMoved) {
            effect = Effect.STALE;
            words = TEXTS.say("cause.withLeg", words);
        } else {
            String turned = words;
            words = expected.of(Map.of(id, net), reading).map(m -> TEXTS.say("cause.withMove", turned, moveWords(m, reading, uncertainty)))
                    .orElse(turned);
        }
        return new Cause(effect, Optional.of(id.kind()), last.entry(), angleAfterLeg && !legMoved, words);
    }

    private String turnedWords(AdjusterId id, double net) {
        Optional<Setting> setting = car.adjuster(id).map(a -> a.setting());
        boolean shim = id.kind() == AdjusterKind.CAMBER_SHIM || setting.orElse(null) instanceof Setting.Shims;
        if (Math.abs(net) < 1e-9) {
            return TEXTS.say(shim ? "cause.shimBack" : "cause.turnedBack", id.words());
        }
        if (shim) {
            return TEXTS.say("cause.shim", id.words(), plain(Math.abs(net)));
        }
        String amount = setting.orElse(null) instanceof Setting.Thread t
                ? Turns.text(net, t.stepsPerTurn(), t.stepName()) : TEXTS.say(Math.abs(net) == 1 ? "cause.turn.one" : "cause.turn.many", plain(Math.abs(net)));
        return TEXTS.say("cause.turned", id.words(), amount);
    }

    private static String moveWords(ExpectedMove.Move move, ReadingId reading, double uncertainty) {
        if (Math.abs(move.amount()) + 2 * move.uncertainty() < uncertainty) {
            return TEXTS.say("cause.unchanged");
        }
        return TEXTS.say("cause.expected", Words.signed(move.amount(), reading.kind()));
    }

    private Cause changed(Timeline.Event last, Figure figure) {
        Effect effect = Staleness.of(last.what(), last.axle(), figure.reading());
        String then = figure.conditions().get(last.key());
        boolean restored = revertible(last) && then != null && Timeline.sameValue(then, last.value());
        if (restored && effect == Effect.STALE) {
            effect = Effect.DOUBTFUL;
        }
        return new Cause(effect, Optional.empty(), last.entry(), false, changedWords(last, then, restored));
    }

    /** Conditions that can go back to what they were and leave the car as it was, but for settling. */
    private static boolean revertible(Timeline.Event event) {
        return event.what() == Disturbance.BAR || Timeline.isPressure(event.key())
                || event.key().equals(Conditions.DRIVER) || event.key().equals(Conditions.FUEL);
    }

    private static String changedWords(Timeline.Event event, String then, boolean restored) {
        String key = event.key();
        if (Timeline.isBar(key)) {
            String bar = Words.bar(key);
            return restored ? TEXTS.say("cause.barBack", bar) : BARS.contains(event.value()) ? TEXTS.say("cause.bar." + event.value(), bar)
                    : TEXTS.say("cause.bar.other", bar, event.value());
        }
        if (key.startsWith("pressure.")) {
            return TEXTS.say(restored ? "cause.pressureBack" : "cause.pressure", Words.place(key.substring("pressure.".length())));
        }
        return switch (key) {
            case Conditions.DRIVER -> TEXTS.say(restored ? "cause.driverBack" : event.value().equals(Conditions.IN) ? "cause.driverIn" : "cause.driverOut");
            case Conditions.FUEL -> restored ? TEXTS.say("cause.fuelBack")
                    : then == null ? TEXTS.say("cause.fuel", event.value()) : TEXTS.say("cause.fuelFrom", then, event.value());
            case Conditions.BALLAST -> TEXTS.say("cause.ballast");
            case Conditions.PADS -> TEXTS.say(event.value().equals(Conditions.LEVELLED) ? "cause.padsLevelled" : "cause.padsMoved");
            case ScaleCorrection.SUBJECT + ".test" -> TEXTS.say("cause.scales");
            case Conditions.TYRES -> TEXTS.say("cause.tyres");
            case Conditions.PRESSURES -> TEXTS.say("cause.pressures");
            case Conditions.SETTLED -> TEXTS.say("cause.settled");
            case Conditions.STEERING -> TEXTS.say("cause.steering");
            case Conditions.LOCKNUTS -> TEXTS.say("cause.locknuts");
            default -> TEXTS.say("cause.other", key);
        };
    }

    private static String plain(double number) {
        String text = Texts.figure("%.2f", number);
        return text.replaceAll("[.,]?0+$", "");
    }
}
