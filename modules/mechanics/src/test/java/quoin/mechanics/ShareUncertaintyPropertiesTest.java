package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** A worse scale is never worth more, another reading never less, and the unit of load does not matter. */
class ShareUncertaintyPropertiesTest {
    private static final double ROUNDING = 1e-12;

    private static PerCorner<Double> loads(AnyCar any) {
        return PerCorner.of(c -> any.between(40, 400));
    }

    @Property(tries = 300)
    void aWorseScaleIsNeverWorthMore(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 2) double more) {
        AnyCar any = new AnyCar(seed);
        PerCorner<Double> loads = loads(any);
        PerCorner<Double> errors = PerCorner.of(c -> any.between(0, 1));
        Corner worse = any.corner();
        notLess(ShareUncertainty.of(loads, errors),
                ShareUncertainty.of(loads, errors.with(worse, errors.get(worse) + more)));
    }

    @Property(tries = 300)
    void everyPartOfTheErrorCounts(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double more,
            @ForAll @IntRange(min = 1, max = 5) int readings) {
        AnyCar any = new AnyCar(seed);
        PerCorner<Double> loads = loads(any);
        double step = any.between(0.1, 0.5);
        double repeat = any.between(0, 1);
        double gain = any.between(0, 0.002);
        ShareUncertainty base = ShareUncertainty.of(loads, new ScaleErrors(step, repeat, gain, readings));
        notLess(base, ShareUncertainty.of(loads, new ScaleErrors(step + more, repeat, gain, readings)));
        notLess(base, ShareUncertainty.of(loads, new ScaleErrors(step, repeat + more, gain, readings)));
        notLess(base, ShareUncertainty.of(loads, new ScaleErrors(step, repeat, gain + more / 100, readings)));
        notLess(ShareUncertainty.of(loads, new ScaleErrors(step, repeat, gain, readings + 1)), base);
    }

    @Property(tries = 300)
    void theUnitOfLoadDoesNotMatter(@ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 10) double unit) {
        AnyCar any = new AnyCar(seed);
        PerCorner<Double> loads = loads(any);
        PerCorner<Double> errors = PerCorner.of(c -> any.between(0, 1));
        ShareUncertainty here = ShareUncertainty.of(loads, errors);
        ShareUncertainty there = ShareUncertainty.of(loads.map(v -> v * unit), errors.map(v -> v * unit));
        assertEquals(here.cross().sharePercent(), there.cross().sharePercent(), 1e-10);
        assertEquals(here.cross().standardPercent(), there.cross().standardPercent(), 1e-10);
        assertEquals(here.front().standardPercent(), there.front().standardPercent(), 1e-10);
        assertEquals(here.left().standardPercent(), there.left().standardPercent(), 1e-10);
    }

    /** An error that all four scales share cancels; without correlation it is what it was. */
    @Property(tries = 300)
    void whatAllScalesShareCancels(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 0.01) double gain) {
        AnyCar any = new AnyCar(seed);
        PerCorner<Double> loads = loads(any);
        PerCorner<Double> errors = PerCorner.of(c -> any.between(0, 1));
        ShareUncertainty own = ShareUncertainty.of(loads, errors);
        ShareUncertainty shared = ShareUncertainty.of(loads, (one, other) -> loads.get(one) * loads.get(other) * gain * gain
                + (one == other ? errors.get(one) * errors.get(one) : 0));
        assertEquals(own.cross().standardPercent(), shared.cross().standardPercent(), 1e-6);
        assertEquals(own.left().standardPercent(), shared.left().standardPercent(), 1e-6);
        assertEquals(own.front().standardPercent(), shared.front().standardPercent(), 1e-6);
    }

    private static void notLess(ShareUncertainty less, ShareUncertainty more) {
        assertTrue(more.front().standardPercent() >= less.front().standardPercent() - ROUNDING);
        assertTrue(more.left().standardPercent() >= less.left().standardPercent() - ROUNDING);
        assertTrue(more.cross().standardPercent() >= less.cross().standardPercent() - ROUNDING);
    }
}
