package quoin.suspension;

/** What can be told of one wheel at one position. The calculator key is what requests and exports use. */
public enum CurveOutput {
    /** + top outboard, relative to the body's z. */
    CAMBER("camber_deg", "camber", "deg"),
    /** + in, relative to the body's x. */
    TOE("toe_deg", "toe", "deg"),
    /** + top of the steering axis rearward. */
    CASTER("caster_deg", "caster", "deg"),
    /** + top of the steering axis inboard. */
    KPI("kpi_deg", "kingpin inclination", "deg"),
    /** Across the car from where the steering axis meets the ground outboard to the contact point. */
    SCRUB_RADIUS("scrubRadius_mm", "scrub radius", "mm"),
    /** Along the car from the contact point forward to where the steering axis meets the ground. */
    TRAIL("mechanicalTrail_mm", "trail", "mm"),
    /** Scrub radius square to the wheel's own heading. */
    SCRUB_RADIUS_WHEEL("scrubRadiusWheelAxes_mm", "scrub radius, wheel axes", "mm"),
    /** Trail along the wheel's own heading. */
    TRAIL_WHEEL("mechanicalTrailWheelAxes_mm", "trail, wheel axes", "mm"),
    /** Contact point outboard of its design position. */
    HALF_TRACK_CHANGE("halfTrackChange_mm", "half-track change", "mm"),
    /** Contact point ahead of its design position. */
    WHEELBASE_CHANGE("wheelbaseChange_mm", "wheelbase change", "mm"),
    /** Toe per mm of travel. */
    BUMP_STEER("bumpSteer_deg_per_mm", "bump steer", "deg/mm"),
    /** Camber per mm of travel. */
    BUMP_CAMBER("bumpCamber_deg_per_mm", "camber gain", "deg/mm"),
    /** Roll centre of the symmetric axle above the contact point, from the upright's material point there. */
    ROLL_CENTRE_HEIGHT("rollCentreHeight_mm", "roll centre height", "mm"),
    /** The same from the path of the contact point itself. */
    ROLL_CENTRE_HEIGHT_PATH("rollCentreHeightFromPatchPath_mm", "roll centre height, patch path", "mm"),
    /** Length of the coil-over between its two joints. */
    COIL_LENGTH("coilLength_mm", "coil length", "mm"),
    /** How much the coil-over shortens per mm of travel. */
    MOTION_RATIO("motionRatio", "motion ratio", "");

    private final String key;
    private final String words;
    private final String unit;

    CurveOutput(String key, String words, String unit) {
        this.key = key;
        this.words = words;
        this.unit = unit;
    }

    /** Stable name with its unit. */
    public String key() {
        return key;
    }

    /** The trade's name in lower case. */
    public String words() {
        return words;
    }

    /** Unit, empty for a plain number. */
    public String unit() {
        return unit;
    }
}
