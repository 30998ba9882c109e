package quoin.suspension.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WalkerTest {

    @Property(tries = 200)
    void comesWhereLevenbergMarquardtComes(@ForAll long seed, @ForAll @DoubleRange(min = -50, max = 50) double travel,
            @ForAll @DoubleRange(min = -20, max = 20) double rack) {
        Loops loops = Wishbones.near(new Random(seed), 15);
        Walker walker = loops.walker();
        assertTrue(walker.moveTo(rack, travel));
        LevenbergMarquardt other = new LevenbergMarquardt(loops);
        for (int i = 1; i <= 5; i++) {
            other.moveTo(rack * i / 5, travel * i / 5);
        }
        assertArrayEquals(other.pose().origin, walker.pose().origin, 1e-6);
        assertArrayEquals(other.pose().rotation, walker.pose().rotation, 1e-8);
    }

    @Property(tries = 200)
    void everyLinkKeepsItsLength(@ForAll long seed, @ForAll @DoubleRange(min = -50, max = 50) double travel,
            @ForAll @DoubleRange(min = -20, max = 20) double rack) {
        Loops loops = Wishbones.near(new Random(seed), 15);
        Walker walker = loops.walker();
        assertTrue(walker.moveTo(rack, travel));
        for (int i = 0; i < 5; i++) {
            double length = Vectors.distance(walker.geometry().fixedPoint(i), walker.pose().point(loops.design.movingPoint(i)));
            assertEquals(loops.design.lengths[i], length, 1e-8);
        }
        assertEquals(loops.origin[2] + travel, walker.pose().origin[2], 1e-8);
    }

    /** The straight way back may be locked; where it is open it ends where the walk began and not on another branch. */
    @Property(tries = 200)
    void comesBackToTheSameBranch(@ForAll long seed) {
        Random random = new Random(seed);
        Loops loops = Wishbones.near(random, 30);
        Walker walker = loops.walker();
        for (int i = 0; i < 20; i++) {
            walker.moveTo(400 * random.nextDouble() - 200, 800 * random.nextDouble() - 400);
        }
        if (walker.moveTo(0, 0)) {
            assertArrayEquals(loops.origin, walker.pose().origin, 1e-7);
            assertArrayEquals(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, walker.pose().rotation, 1e-9);
        }
    }

    @Property(tries = 100)
    void motionIsTheDifferenceOfPositions(@ForAll long seed, @ForAll @DoubleRange(min = -40, max = 40) double travel) {
        Loops loops = Wishbones.near(new Random(seed), 15);
        Walker walker = loops.walker();
        walker.moveTo(0, travel);
        double[] motion = walker.motion(loops.heightChange(1));
        double[] steer = walker.motion(loops.rackChange());
        double h = 1e-3;
        assertArrayEquals(slope(loops, h, travel, 1, 0), new double[] {motion[0], motion[1], motion[2]}, 1e-6);
        assertArrayEquals(slope(loops, h, travel, 0, 1), new double[] {steer[0], steer[1], steer[2]}, 1e-6);
    }

    private static double[] slope(Loops loops, double h, double travel, double perTravel, double perRack) {
        Walker above = loops.walker();
        Walker below = loops.walker();
        above.moveTo(h * perRack, travel + h * perTravel);
        below.moveTo(-h * perRack, travel - h * perTravel);
        return Vectors.times(1 / (2 * h), Vectors.minus(above.pose().origin, below.pose().origin));
    }

    @Test
    void stopsWhereTheLinkageLocks() {
        Walker walker = Wishbones.typical().walker();
        assertFalse(walker.moveTo(0, 600));
        double reached = walker.heightsMm()[0];
        assertTrue(reached > 100 && reached < 600, "reached " + reached);
        assertFalse(walker.moveTo(0, reached + 1));
        assertEquals(reached, walker.heightsMm()[0], 0.1);
        assertTrue(walker.moveTo(0, reached - 5));
    }

    @Test
    void aBodyThatIsHeldTwiceOrLooseIsRefused() {
        Loops loops = Wishbones.typical();
        List<Constraint> rods = List.of(loops.constraints).subList(0, 5);
        int[] driven = {5};
        int[] rack = {};
        assertThrows(IllegalArgumentException.class,
                () -> new Loops(rods.subList(0, 4), loops.design, loops.origin, driven, rack));
        assertThrows(IllegalArgumentException.class,
                () -> new Loops(rods, loops.design, loops.origin, new int[] {5, 4}, rack));
    }
}
