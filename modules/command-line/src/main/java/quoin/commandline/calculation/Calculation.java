package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;

/** One calculation that a request can name. */
public interface Calculation {
    /** The name that requests use; never changes once published. */
    String name();

    /**
     * Reads the whole input, then hands back the work, so that an unknown field is refused before anything is computed.
     *
     * @param input the request's input
     * @return computes the result
     * @throws RefusedException naming the field that is missing or cannot be
     */
    Supplier<ObjectNode> read(Fields input);
}
