package quoin.curves.draw;

import org.openide.util.NbBundle.Messages;
import quoin.mechanics.SpacePoint;

/** From where the geometry is looked at; right and up on the screen, mm. */
@Messages({"view.front=From ahead", "view.side=From the left", "view.plan=From above, front at the top"})
enum View {
    FRONT, SIDE, PLAN;

    /** From ahead the car's left is on the right hand; from above it is on the left. */
    double right(SpacePoint point) {
        return switch (this) {
            case FRONT -> point.yMm();
            case SIDE -> -point.xMm();
            case PLAN -> -point.yMm();
        };
    }

    double up(SpacePoint point) {
        return this == PLAN ? point.xMm() : point.zMm();
    }

    String title() {
        return switch (this) {
            case FRONT -> Bundle.view_front();
            case SIDE -> Bundle.view_side();
            case PLAN -> Bundle.view_plan();
        };
    }
}
