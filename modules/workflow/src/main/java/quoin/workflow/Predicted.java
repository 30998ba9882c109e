package quoin.workflow;

import java.util.Optional;
import quoin.car.Target;

/**
 * What one reading will become.
 *
 * @param now         as read, base unit
 * @param predicted   after the turns
 * @param uncertainty standard uncertainty of the prediction, same unit; 0 where it is not known
 * @param target      what it should be; empty where there is no target
 */
public record Predicted(double now, double predicted, double uncertainty, Optional<Target> target) {

    public double change() {
        return predicted - now;
    }
}
