package quoin.suspensionmeasured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.car.AdjusterKind;
import quoin.car.Setting;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;

/** What can be measured of one adjuster: each unit is a turn of its thread or a mm of its shims. */
enum MeasuredAdjuster {
    CAMBER_ROD(AdjusterKind.CAMBER_ROD, "camberRod", "camber rod", "per_turn", "per turn of the"),
    CAMBER_SHIM(AdjusterKind.CAMBER_SHIM, "camberShim", "camber shim", "per_mm", "per mm of"),
    CASTER_ROD(AdjusterKind.CASTER_ROD, "casterRod", "caster rod", "per_turn", "per turn of the"),
    TOE_LINK(AdjusterKind.TOE_LINK, "toeLink", "toe link", "per_turn", "per turn of the");

    private final AdjusterKind kind;
    private final String group;
    private final String words;
    private final String per;
    private final String perWords;

    MeasuredAdjuster(AdjusterKind kind, String group, String words, String per, String perWords) {
        this.kind = kind;
        this.group = group;
        this.words = words;
        this.per = per;
        this.perWords = perWords;
    }

    AdjusterKind kind() {
        return kind;
    }

    List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>();
        parameters.add(parameter("camber_deg", "Camber", "deg", "plus is top outboard"));
        parameters.add(parameter("toe_deg", "Toe", "deg", "plus is toe-in"));
        parameters.add(parameter("caster_deg", "Caster", "deg", "plus is top rearward"));
        parameters.add(parameter("lift_mm", "Lift", "mm", "plus is the corner rising on the same spring"));
        return parameters;
    }

    private Parameter parameter(String what, String label, String unit, String sign) {
        String unitPer = unit + (per.equals("per_mm") ? "/mm" : "/turn");
        return MeasuredSuspension.figure(key(what), label + " " + perWords + " " + words, unitPer,
                "Change " + perWords + " " + words + ", plus as the racer turns it for " + purpose() + "; " + sign);
    }

    private String purpose() {
        return switch (kind) {
            case CASTER_ROD -> "more caster";
            case TOE_LINK -> "toe-in";
            default -> "the top outboard";
        };
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
