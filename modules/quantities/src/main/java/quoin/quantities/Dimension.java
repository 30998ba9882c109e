package quoin.quantities;

/** What a figure measures. Inside the code every figure is in the base unit of its dimension. */
public enum Dimension {
    /** Base unit mm. */
    LENGTH,
    /** Base unit degree. */
    ANGLE,
    /** Base unit kg. */
    MASS,
    /** Base unit N. Scale readings are forces read in kg or lb, see {@link Unit#KGF}. */
    FORCE,
    /** Base unit N/mm. */
    STIFFNESS,
    /** Base unit bar. */
    PRESSURE,
    /** Base unit litre. */
    VOLUME,
    /** Base unit degree Celsius. */
    TEMPERATURE,
    /** Base unit N m. */
    TORQUE,
    /** Base unit one full turn. */
    TURNS,
    /** Base unit per cent. */
    PERCENT,
    /** A plain number. */
    NUMBER;

    /** Words for messages, with the article: "a spring rate". */
    public Phrase phrase() {
        return Texts.of(Dimension.class).phrase("dimension." + name());
    }

    /** The unit values of this dimension have inside the code. */
    public Unit baseUnit() {
        return switch (this) {
            case LENGTH -> Unit.MM;
            case ANGLE -> Unit.DEG;
            case MASS -> Unit.KG;
            case FORCE -> Unit.N;
            case STIFFNESS -> Unit.N_PER_MM;
            case PRESSURE -> Unit.BAR;
            case VOLUME -> Unit.LITRE;
            case TEMPERATURE -> Unit.DEG_C;
            case TORQUE -> Unit.N_M;
            case TURNS -> Unit.TURN;
            case PERCENT -> Unit.PERCENT;
            case NUMBER -> Unit.ONE;
        };
    }
}
