package quoin.quantities;

/** What a figure measures. Inside the code every figure is in the base unit of its dimension. */
public enum Dimension {
    /** Base unit mm. */
    LENGTH("a length"),
    /** Base unit degree. */
    ANGLE("an angle"),
    /** Base unit kg. */
    MASS("a mass"),
    /** Base unit N. Scale readings are forces read in kg or lb, see {@link Unit#KGF}. */
    FORCE("a load"),
    /** Base unit N/mm. */
    STIFFNESS("a spring rate"),
    /** Base unit bar. */
    PRESSURE("a pressure"),
    /** Base unit litre. */
    VOLUME("a volume"),
    /** Base unit degree Celsius. */
    TEMPERATURE("a temperature"),
    /** Base unit N m. */
    TORQUE("a torque"),
    /** Base unit one full turn. */
    TURNS("a number of turns"),
    /** Base unit per cent. */
    PERCENT("a percentage"),
    /** A plain number. */
    NUMBER("a plain number");

    private final String phrase;

    Dimension(String phrase) {
        this.phrase = phrase;
    }

    /** Words for messages, with the article: "a spring rate". */
    public String phrase() {
        return phrase;
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
