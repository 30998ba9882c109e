package quoin.suspension;

import quoin.quantities.Texts;

/** What can be told of one wheel at one position. The calculator key is what requests and exports use. */
public enum CurveOutput {
    /** + top outboard, relative to the body's z. */
    CAMBER("camber_deg", "deg"),
    /** + in, relative to the body's x. */
    TOE("toe_deg", "deg"),
    /** + top of the steering axis rearward. */
    CASTER("caster_deg", "deg"),
    /** + top of the steering axis inboard. */
    KPI("kpi_deg", "deg"),
    /** Across the car from where the steering axis meets the ground outboard to the contact point. */
    SCRUB_RADIUS("scrubRadius_mm", "mm"),
    /** Along the car from the contact point forward to where the steering axis meets the ground. */
    TRAIL("mechanicalTrail_mm", "mm"),
    /** Scrub radius square to the wheel's own heading. */
    SCRUB_RADIUS_WHEEL("scrubRadiusWheelAxes_mm", "mm"),
    /** Trail along the wheel's own heading. */
    TRAIL_WHEEL("mechanicalTrailWheelAxes_mm", "mm"),
    /** Contact point outboard of its design position. */
    HALF_TRACK_CHANGE("halfTrackChange_mm", "mm"),
    /** Contact point ahead of its design position. */
    WHEELBASE_CHANGE("wheelbaseChange_mm", "mm"),
    /** Toe per mm of travel. */
    BUMP_STEER("bumpSteer_deg_per_mm", "deg/mm"),
    /** Camber per mm of travel. */
    BUMP_CAMBER("bumpCamber_deg_per_mm", "deg/mm"),
    /** Roll centre of the symmetric axle above the contact point, from the upright's material point there. */
    ROLL_CENTRE_HEIGHT("rollCentreHeight_mm", "mm"),
    /** The same from the path of the contact point itself. */
    ROLL_CENTRE_HEIGHT_PATH("rollCentreHeightFromPatchPath_mm", "mm"),
    /** Length of the coil-over between its two joints. */
    COIL_LENGTH("coilLength_mm", "mm"),
    /** How much the coil-over shortens per mm of travel. */
    MOTION_RATIO("motionRatio", "");

    private final String key;
    private final String unit;

    CurveOutput(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** Stable name with its unit. */
    public String key() {
        return key;
    }

    /** The trade's name. */
    public String words() {
        return Texts.of(CurveOutput.class).say("output." + name());
    }

    /** Unit, empty for a plain number. */
    public String unit() {
        return unit;
    }
}
