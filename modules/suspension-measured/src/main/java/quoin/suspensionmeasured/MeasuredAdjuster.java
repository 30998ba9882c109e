package quoin.suspensionmeasured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.car.AdjusterKind;
import quoin.car.Setting;
import quoin.quantities.Texts;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;

/** What can be measured of one adjuster: each unit is a turn of its thread or a mm of its shims. */
enum MeasuredAdjuster {
    CAMBER_ROD(AdjusterKind.CAMBER_ROD, "camberRod", "per_turn"),
    CAMBER_SHIM(AdjusterKind.CAMBER_SHIM, "camberShim", "per_mm"),
    CASTER_ROD(AdjusterKind.CASTER_ROD, "casterRod", "per_turn"),
    TOE_LINK(AdjusterKind.TOE_LINK, "toeLink", "per_turn");
    private static final Texts TEXTS = Texts.of(MeasuredAdjuster.class);

    private final AdjusterKind kind;
    private final String group;
    private final String per;

    MeasuredAdjuster(AdjusterKind kind, String group, String per) {
        this.kind = kind;
        this.group = group;
        this.per = per;
    }

    AdjusterKind kind() {
        return kind;
    }

    List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>();
        parameters.add(parameter("camber_deg", TEXTS.say("camber"), "deg", TEXTS.say("plusIsTopOutboard")));
        parameters.add(parameter("toe_deg", TEXTS.say("toe"), "deg", TEXTS.say("plusIsToeIn")));
        parameters.add(parameter("caster_deg", TEXTS.say("caster"), "deg", TEXTS.say("plusIsTopRearward")));
        parameters.add(parameter("lift_mm", TEXTS.say("lift"), "mm", TEXTS.say("plusIsTheCornerRisingOnTheSameSpring")));
        return parameters;
    }

    private Parameter parameter(String what, String label, String unit, String sign) {
        String unitPer = unit + (per.equals("per_mm") ? "/mm" : "/turn");
        return MeasuredSuspension.figure(key(what), TEXTS.say("per." + group, label), unitPer,
                TEXTS.say("help." + group, sign));
    }

    private String key(String what) {
        return group + "." + what + "_" + per;
    }

    /** Empty where nothing was measured of this adjuster, or what was measured is not in the unit it is set by. */
    Optional<AdjusterEffect> effect(ParameterValues values, Setting setting) {
        boolean perMm = per.equals("per_mm");
        if (!values.hasGroup(group) || !perMm && setting instanceof Setting.Shims) {
            return Optional.empty();
        }
        AdjusterEffect stated = new AdjusterEffect(new AngleChange(values.numberOr(key("camber_deg"), 0),
                values.numberOr(key("toe_deg"), 0), values.numberOr(key("caster_deg"), 0)),
                values.numberOr(key("lift_mm"), 0));
        return Optional.of(perMm && setting instanceof Setting.Thread thread ? stated.times(thread.mmPerTurn()) : stated);
    }
}
