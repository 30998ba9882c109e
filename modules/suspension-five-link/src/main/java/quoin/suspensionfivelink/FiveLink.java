package quoin.suspensionfivelink;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.quantities.Texts;
import quoin.suspension.Change;
import quoin.suspension.CornerKinematics;
import quoin.suspension.HardPoints;
import quoin.suspension.Link;
import quoin.suspension.Linkage;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;

/** Five links with a joint at each end; one of them is the tie rod or toe link. Its steering axis is the momentary screw. */
@ServiceProvider(service = SuspensionType.class)
public final class FiveLink implements SuspensionType {
    private static final Texts TEXTS = Texts.of(FiveLink.class);
    private static final List<String> LINKS = List.of("link1", "link2", "link3", "link4");
    private static final String CAMBER_ROD = "camberRod";
    private static final String CASTER_ROD = "casterRod";

    @Override
    public String id() {
        return "five-link";
    }

    @Override
    public String name() {
        return TEXTS.say("fiveLink");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(HardPoints.wheel());
        for (int i = 0; i < LINKS.size(); i++) {
            parameters.addAll(HardPoints.link(LINKS.get(i), TEXTS.say("linkNumber", i + 1)));
        }
        parameters.addAll(HardPoints.link("tie", TEXTS.say("tieRodOrToeLink")));
        parameters.addAll(HardPoints.coil());
        parameters.add(Parameter.choice(CAMBER_ROD, TEXTS.say("camberIsTurnedAt"), TEXTS.say("theLinkThatSetsCamber"), LINKS).optional());
        parameters.add(Parameter.choice(CASTER_ROD, TEXTS.say("casterIsTurnedAt"), TEXTS.say("theLinkThatSetsCaster"), LINKS).optional());
        return List.copyOf(parameters);
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        Linkage linkage = new Linkage(side, HardPoints.wheel(values));
        Map<String, Change> lengths = new LinkedHashMap<>();
        for (String name : LINKS) {
            lengths.put(name, Change.lengthen(HardPoints.link(linkage, values, name), 1));
        }
        Link tie = HardPoints.link(linkage, values, "tie");
        linkage.rack(tie.inboard());
        HardPoints.coil(linkage, values);
        linkage.adjuster("tieRodLength", Change.lengthen(tie, 1));
        lengths.forEach((name, change) -> linkage.adjuster(name + "Length", change));
        linkage.adjuster(AdjusterKind.TOE_LINK, Change.lengthen(tie, 1));
        values.choice(CAMBER_ROD).ifPresent(name -> linkage.adjuster(AdjusterKind.CAMBER_ROD, lengths.get(name)));
        values.choice(CASTER_ROD).ifPresent(name -> linkage.adjuster(AdjusterKind.CASTER_ROD, lengths.get(name)));
        return linkage.build();
    }
}
