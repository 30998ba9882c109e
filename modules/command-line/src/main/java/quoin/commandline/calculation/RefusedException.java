package quoin.commandline.calculation;

/** A request that is not answered, with the field at fault by its path. */
public final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    public RefusedException(String field, String message) {
        super(message);
        this.field = field;
    }

    public String field() {
        return field;
    }
}
