package quoin.mechanics;

import java.util.List;

/**
 * Corner loads and ride heights by exact equilibrium: finite rotation of the body, tyres and springs in series, rising
 * motion ratios, bars, roll-centre guidance, chassis twist, pad heights. Solved by Newton's method with the exact
 * tangent; derivatives by implicit differentiation. Derived here; checked by energy minimisation and by a rigid-body
 * simulation. Limits: springs stay on their seats (see {@link LoadFinding}), no bump or droop stop is touched, the pads
 * let the tyres slide freely, no friction.
 */
public final class CornerLoads {
    /** Inputs that a racer turns. */
    public static final List<LoadInput> ADJUSTERS = List.of(LoadInput.PERCH, LoadInput.ROD);

    private CornerLoads() {
    }

    /**
     * @param car the car
     * @param turns turns made since the design position
     * @return the car at rest
     * @throws NoEquilibriumException if the car cannot stand
     */
    public static Equilibrium solve(CarModel car, Turns turns) {
        return new EquilibriumSolver(car, turns).equilibrium();
    }

    /** What one turn of every perch and rod does, at the state given by the turns already made. */
    public static List<Sensitivity> sensitivities(CarModel car, Turns turns) {
        return sensitivities(car, turns, ADJUSTERS);
    }

    /** The same for chosen inputs; the list runs through the inputs and, for each, the corners LF RF LR RR. */
    public static List<Sensitivity> sensitivities(CarModel car, Turns turns, List<LoadInput> inputs) {
        return new EquilibriumSolver(car, turns).sensitivities(inputs);
    }

    /** State of rest and sensitivities from one solution. */
    public static Response response(CarModel car, Turns turns, List<LoadInput> inputs) {
        EquilibriumSolver solver = new EquilibriumSolver(car, turns);
        return new Response(solver.equilibrium(), solver.sensitivities(inputs));
    }

    /**
     * A state of rest and what one unit of each input does to it.
     *
     * @param state the car at rest
     * @param sensitivities derivatives at that state
     */
    public record Response(Equilibrium state, List<Sensitivity> sensitivities) {
    }
}
