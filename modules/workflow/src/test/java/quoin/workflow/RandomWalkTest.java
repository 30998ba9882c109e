package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.RandomWalkModel.Group;
import quoin.workflow.RandomWalkModel.Op;
import quoin.workflow.RandomWalkModel.What;
import quoin.workflow.spi.Stage;

/** 20,000 random steps, or {@code -Dquoin.steps}: whatever is done, the order of work agrees with a second, simpler account of it. */
class RandomWalkTest {

    private static final int STEPS = Integer.getInteger("quoin.steps", 20_000);
    private static final int STEPS_A_DAY = 80;

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());
    private final Random random = new Random(23);
    private DayBook book;
    private List<Op> ops;
    private List<Long> numbers;
    private String next;
    private int byTheRules;
    private int finals;
    private int sentBack;

    @Test
    void theOrderIsNeverBroken() {
        for (int step = 0; step < STEPS; step++) {
            if (step % STEPS_A_DAY == 0) {
                book = new DayBook().prepared();
                ops = new ArrayList<>();
                numbers = new ArrayList<>();
                next = "preparation";
            }
            int before = book.size();
            step();
            check(before);
        }
        assertTrue(byTheRules > 500 && finals > 10 && sentBack > 100,
                "the walk reaches every stage: " + byTheRules + " sign-offs, " + finals + " to the end, " + sentBack + " sent back");
    }

    private void step() {
        int dice = random.nextInt(100);
        if (dice < 35) {
            read();
        } else if (dice < 60) {
            sign(random.nextInt(3) == 0 ? anyStage() : next);
        } else if (dice < 75) {
            one(What.SETTLE);
        } else if (dice < 80) {
            turn();
        } else if (dice < 84) {
            one(random.nextInt(3) == 0 ? What.DRIVER_OUT : What.DRIVER_IN);
        } else if (dice < 88) {
            one(random.nextInt(4) == 0 ? What.PADS_MOVED : What.PADS_LEVELLED);
        } else if (dice < 92) {
            one(random.nextInt(3) == 0 ? What.BAR_ON : What.BAR_OFF);
        } else if (dice < 93) {
            one(What.JACK);
        } else if (dice < 94) {
            Op op = new Op(What.REOPEN, 0, 0, null, anyStage());
            remember(op, book.add(new Entry.Reopened(new Header(0, Instant.EPOCH, op.stage()), "look again")));
        } else if (dice < 97) {
            withdraw();
        } else {
            one(random.nextBoolean() ? What.DRIVER_IN : What.PADS_LEVELLED);
        }
    }

    private void remember(Op op, Entry entry) {
        ops.add(op);
        numbers.add(entry.number());
    }

    private void one(What what) {
        switch (what) {
            case SETTLE -> book.settle();
            case JACK -> book.condition(Conditions.SETTLED, Conditions.NO);
            case DRIVER_IN, DRIVER_OUT -> book.condition(Conditions.DRIVER, what == What.DRIVER_IN ? Conditions.IN : Conditions.OUT);
            case PADS_LEVELLED, PADS_MOVED -> book.condition(Conditions.PADS,
                    what == What.PADS_LEVELLED ? Conditions.LEVELLED : Conditions.MOVED);
            default -> book.condition("front-bar", what == What.BAR_OFF ? Conditions.DISCONNECTED : Conditions.CONNECTED);
        }
        remember(new Op(what, 0, 0, null, ""), book.entries().get(book.size() - 1));
    }

    /** Half a millimetre to two and a half of leg on a perch, or a rod or link at LF. */
    private void turn() {
        Corner corner = Corner.values()[random.nextInt(4)];
        What what = List.of(What.PERCH, What.PERCH, What.CAMBER, What.TOE).get(random.nextInt(4));
        double turns = (1 + random.nextInt(10)) * (random.nextBoolean() ? 0.125 : -0.125);
        switch (what) {
            case PERCH -> book.turn(AdjusterKind.PERCH, corner, turns);
            case CAMBER -> book.turn(AdjusterKind.CAMBER_ROD, corner, turns);
            default -> book.turn(AdjusterKind.TOE_LINK, corner, turns);
        }
        remember(new Op(what, corner.ordinal(), 2 * turns, null, ""), book.entries().get(book.size() - 1));
    }

    private void read() {
        Group group = random.nextInt(3) == 0 ? Group.values()[random.nextInt(3)] : switch (next) {
            case "preparation", "ride-height" -> Group.HEIGHTS;
            case "corner-weights" -> random.nextInt(4) == 0 ? Group.HEIGHTS : Group.LOADS;
            case "wheel-angles" -> Group.ANGLES;
            default -> Group.values()[random.nextInt(3)];
        };
        // Bad ones lie so far off that no mean with good ones makes them good.
        boolean good = random.nextInt(10) > 0;
        Map<ReadingId, Double> values = switch (group) {
            case HEIGHTS -> good ? DayBook.goodHeights() : DayBook.heights(62, 62, 70, 74);
            case LOADS -> DayBook.loads(good ? 50 : 51);
            case ANGLES -> DayBook.goodAngles();
        };
        boolean inside = good || group == Group.ANGLES;
        String stage = List.of("ride-height", "corner-weights", "wheel-angles", "final-recheck").get(random.nextInt(4));
        book.read(stage, values);
        remember(new Op(inside ? What.READ_GOOD : What.READ_BAD, 0, 0, group, ""), book.entries().get(book.size() - 1));
    }

    private String anyStage() {
        return order.stages().get(random.nextInt(5)).id();
    }

    private void sign(String stage) {
        RandomWalkModel model = new RandomWalkModel(ops);
        boolean holds = model.isSigned(stage) && model.holds(stage);
        Gate<Entry.SignOff> gate = order.signOff(book.day(), stage);
        assertEquals(!holds && model.maySign(stage), gate.allowed(), () -> stage + ": " + gate.reasons() + told());
        if (gate.allowed()) {
            byTheRules++;
            finals += stage.equals("final-recheck") ? 1 : 0;
            remember(new Op(What.SIGN, 0, 0, null, stage), book.add(gate.entry().orElseThrow()));
        } else if (!holds && random.nextInt(60) == 0) {
            remember(new Op(What.WAIVE, 0, 0, null, stage), book.add(order.signOff(book.day(), stage, "dark soon").entry().orElseThrow()));
        }
    }

    private void withdraw() {
        if (ops.isEmpty()) {
            return;
        }
        int i = random.nextInt(ops.size());
        book.withdraw(numbers.get(i));
        ops.set(i, null);
    }

    private void check(int before) {
        Day day = book.day();
        RandomWalkModel model = new RandomWalkModel(ops);
        DayStatus status = order.status(day);
        for (Stage stage : order.stages()) {
            StageState state = status.stage(stage.id()).state();
            boolean signed = model.isSigned(stage.id());
            assertEquals(signed && model.holds(stage.id()), state == StageState.SIGNED,
                    () -> stage.id() + " " + status.stage(stage.id()).reasons() + told());
            assertEquals(signed, state == StageState.SIGNED || state == StageState.CHECK_AGAIN, () -> stage.id() + told());
            sentBack += state == StageState.CHECK_AGAIN ? 1 : 0;
            assertFalse(status.stage(stage.id()).reasons().isEmpty() && state != StageState.READY, "every state has its reason");
        }
        assertTrue(day.written().size() >= before && day.written().equals(book.entries()), "nothing recorded disappears");
        assertEquals(model.recorded(Group.HEIGHTS), day.history(DayBook.height(Corner.LF)).size());
        assertEquals(model.recorded(Group.LOADS), day.history(DayBook.load(Corner.LF)).size());
        assertEquals(model.recorded(Group.ANGLES), day.history(DayBook.toe(Corner.LF)).size());
        if (before % 20 == 0) {
            assertFalse(order.close(day).allowed(), "bars and nuts were never seen to");
        }
        assertFalse(status.next().words().isBlank());
        next = status.next().stageId();
    }

    private String told() {
        return ops.toString();
    }
}
