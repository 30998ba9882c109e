package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class SlopeCamberTest {

    /** A wheel stood on a tilted floor with Hipparchus' rotations, its gauge read against the vertical. */
    @Property(tries = 200)
    void comesBackFromATiltedFloor(@ForAll @DoubleRange(min = -6, max = 6) double camber,
            @ForAll @DoubleRange(min = -2, max = 2) double toe, @ForAll @DoubleRange(min = -3, max = 3) double toLeft,
            @ForAll @DoubleRange(min = -3, max = 3) double forward, @ForAll boolean left) {
        double side = left ? 1 : -1;
        double c = Math.toRadians(camber);
        double t = Math.toRadians(toe);
        Vector3D spin = new Vector3D(Math.cos(c) * Math.sin(t), side * Math.cos(c) * Math.cos(t), -Math.sin(c));
        double across = Math.sin(Math.toRadians(toLeft));
        double along = Math.sin(Math.toRadians(forward));
        Vector3D up = new Vector3D(along, across, Math.sqrt(1 - across * across - along * along));
        Rotation floor = new Rotation(up, Vector3D.PLUS_K);
        double gauge = Math.toDegrees(-Math.asin(floor.applyTo(spin).getZ()));
        SlopeCamber read = new SlopeCamber(left, gauge, toe, toLeft, forward);
        assertEquals(camber, read.camberToFloorDeg(), 1e-9);
    }

    @Test
    void theSlopeIsOppositeOnTheTwoSides() {
        assertEquals(0.05, new SlopeCamber(true, -0.32, 0, 0.37, 0).camberToFloorDeg(), 1e-9);
        assertEquals(-0.69, new SlopeCamber(false, -0.32, 0, 0.37, 0).camberToFloorDeg(), 1e-9);
        assertEquals(-0.69, new SlopeCamber(false, -0.32, 0, 0.37, 0).firstOrderDeg(), 1e-12);
    }

    @Test
    void aCliffIsRefused() {
        assertEquals("floorRisesForward_deg",
                assertThrows(InvalidInputException.class, () -> new SlopeCamber(true, 0, 0, 0, 60)).field());
    }
}
