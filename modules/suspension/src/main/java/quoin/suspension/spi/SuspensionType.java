package quoin.suspension.spi;

import java.util.List;
import quoin.suspension.CornerKinematics;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;

/**
 * A kind of suspension. Register it with {@code @ServiceProvider(service = SuspensionType.class)}; it needs a public
 * constructor without arguments and holds no state.
 */
public interface SuspensionType {

    /** Stable id that files store, such as {@code double-wishbone}; never changes once published. */
    String id();

    /** What the trade calls it, such as "Double wishbone". */
    String name();

    /** What it asks for, in the order of the form. The same for both sides of an axle. */
    List<Parameter> parameters();

    /**
     * One corner with its parameters put in. Points are given with y outboard from the centre line; the right side is the
     * mirror image of the left.
     *
     * @param values read by {@link ParameterValues#read} without problems
     * @throws quoin.mechanics.InvalidInputException naming the parameter that no such suspension can have, for example
     *     points that coincide
     */
    CornerKinematics corner(ParameterValues values, Side side);
}
