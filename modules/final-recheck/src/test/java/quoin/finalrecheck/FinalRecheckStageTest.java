package quoin.finalrecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.Closing;
import quoin.workflow.spi.Requirement;

class FinalRecheckStageTest {

    private final FinalRecheckStage stage = new FinalRecheckStage();
    private final Car car = Ouzel23.car();

    @Test
    void everythingIsReadAndEveryTargetJudged() {
        assertEquals(4 + 4 + 2 + 4 + 4, stage.readings(car).size(), "loads, heights, front casters, cambers, toes");
        Set<ReadingId> judged = new HashSet<>(stage.judged(car));
        assertEquals(car.targets().readings().keySet(), judged);
        ReadingId total = ReadingId.ofCar(ReadingKind.TOTAL);
        Car wanted = car.withTargets(car.targets().with(total, new Target(638, 5)));
        assertTrue(stage.judged(wanted).contains(total));
        ReadingId rearCaster = ReadingId.of(ReadingKind.CASTER, Corner.LR);
        assertTrue(stage.readings(car.withTargets(car.targets().with(rearCaster, new Target(1, 0.5)))).contains(rearCaster));
    }

    @Test
    void whatIsUndoneBeforeTheClose() {
        List<Requirement> closing = Closing.requirements(car);
        assertEquals(List.of("front-bar", Conditions.DAMPERS, Conditions.LOCKNUTS, Conditions.STEERING),
                closing.stream().map(Requirement::key).toList(), "the demo car has no rear bar; the lock stays in for the last toe");
        closing.forEach(r -> assertTrue(r.caution().isPresent(), r.key()));
    }
}
