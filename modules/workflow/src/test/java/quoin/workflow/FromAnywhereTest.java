package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Stage;

/** No dead ends: however confused a day has become, doing the next step again and again closes it by the rules. */
class FromAnywhereTest {

    private static final int DAYS = 60;
    /** Five stages redone twice, each with every condition, some readings and turns: far more than any day took here. */
    private static final int MOST_STEPS = 150;

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    @Test
    @Tag("slow")
    void theNextStepAlwaysLeadsToTheClose() {
        int longest = 0;
        for (int seed = 0; seed < DAYS; seed++) {
            Random random = new Random(seed);
            LinearCar car = new LinearCar();
            for (Corner corner : Corner.values()) {
                car.out(DayBook.camber(corner), random.nextGaussian() / 2).out(DayBook.toe(corner), random.nextGaussian() / 5);
            }
            car.out(DayBook.CROSS, random.nextGaussian()).barOut(random.nextGaussian() / 3);
            DayBook book = random.nextBoolean() ? new DayBook() : new DayBook().signedToAngles(order);
            int muddle = random.nextInt(40);
            for (int i = 0; i < muddle; i++) {
                muddle(book, car, random);
            }
            NextStepFollower racer = new NextStepFollower(order, car);
            try {
                longest = Math.max(longest, racer.follow(book, MOST_STEPS).size());
            } catch (AssertionError e) {
                throw new AssertionError("day " + seed + ": " + e.getMessage(), e);
            }
            assertEquals(Optional.empty(), book.day().closed().orElseThrow().outOfOrder());
            for (Stage stage : order.stages()) {
                assertEquals(StageState.SIGNED, order.status(book.day()).stage(stage.id()).state());
            }
        }
        assertTrue(longest > 40, "the days were muddled: longest took " + longest + " steps");
    }

    /** One thing a racer may do at any time, sensible or not. */
    private void muddle(DayBook book, LinearCar car, Random random) {
        Corner corner = Corner.values()[random.nextInt(4)];
        String stage = order.stages().get(random.nextInt(5)).id();
        switch (random.nextInt(12)) {
            case 0, 1 -> book.turn(AdjusterKind.values()[random.nextInt(AdjusterKind.values().length)], corner, (random.nextInt(9) - 4) / 4.0);
            case 2 -> book.condition(Conditions.SETTLED, random.nextBoolean() ? Conditions.YES : Conditions.NO);
            case 3 -> book.condition(Conditions.PADS, random.nextBoolean() ? Conditions.LEVELLED : Conditions.MOVED);
            case 4 -> book.condition(Conditions.DRIVER, random.nextBoolean() ? Conditions.IN : Conditions.OUT);
            case 5 -> book.condition(random.nextBoolean() ? "front-bar" : "rear-bar",
                    random.nextBoolean() ? Conditions.CONNECTED : Conditions.DISCONNECTED);
            case 6 -> book.condition(Conditions.LOCKNUTS, Conditions.YES)
                    .condition(Conditions.STEERING, random.nextBoolean() ? Conditions.FREE : Conditions.LOCKED);
            case 7 -> book.condition(Conditions.FUEL, String.valueOf(random.nextInt(3) * 10));
            case 8 -> {
                List<ReadingId> some = LinearCar.everything().stream().filter(id -> random.nextInt(3) > 0).toList();
                book.read(stage, car.read(book.day(), some));
            }
            case 9 -> (random.nextInt(3) > 0 ? order.signOff(book.day(), stage) : order.signOff(book.day(), stage, "rain"))
                    .entry().ifPresent(book::add);
            case 10 -> book.add(new Entry.Reopened(new Header(0, Instant.EPOCH, stage), "look again"));
            default -> {
                Entry entry = book.entries().get(random.nextInt(book.size()));
                if (entry instanceof Entry.Reading || entry instanceof Entry.SignOff || entry instanceof Entry.Reopened) {
                    book.withdraw(entry.number());
                }
            }
        }
    }
}
