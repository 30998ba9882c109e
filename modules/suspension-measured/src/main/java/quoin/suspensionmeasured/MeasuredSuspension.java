package quoin.suspensionmeasured;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.lookup.ServiceProvider;
import quoin.quantities.Texts;
import quoin.suspension.CornerKinematics;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;

/**
 * A suspension without hard points: the racer says what he has seen one turn or one mm do. What is left blank is taken as
 * no effect until a round shows otherwise.
 */
@ServiceProvider(service = SuspensionType.class)
public final class MeasuredSuspension implements SuspensionType {
    private static final Texts TEXTS = Texts.of(MeasuredSuspension.class);

    @Override
    public String id() {
        return "measured";
    }

    @Override
    public String name() {
        return TEXTS.say("measured");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>();
        parameters.add(figure("camber_deg_per_mm", TEXTS.say("camberPerMmOfTravel"), "deg/mm",
                TEXTS.say("changeOfCamberFor1MmTheWheelRisesIntoThe")));
        parameters.add(figure("toe_deg_per_mm", TEXTS.say("toePerMmOfTravel"), "deg/mm",
                TEXTS.say("changeOfToeFor1MmTheWheelRisesIntoThe")));
        parameters.add(figure("caster_deg_per_mm", TEXTS.say("casterPerMmOfTravel"), "deg/mm",
                TEXTS.say("changeOfCasterFor1MmTheWheelRisesIntoThe")));
        for (MeasuredAdjuster adjuster : MeasuredAdjuster.values()) {
            parameters.addAll(adjuster.parameters());
        }
        return List.copyOf(parameters);
    }

    static Parameter figure(String key, String label, String unit, String help) {
        return Parameter.number(key, label, unit, help).optional();
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        return new MeasuredCorner(values);
    }
}
