package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Small pieces of results. */
final class Results {
    private Results() {
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ObjectNode perCorner(PerCorner<Double> values) {
        ObjectNode node = object();
        for (Corner corner : Corner.values()) {
            node.put(corner.name(), values.get(corner));
        }
        return node;
    }

    static ObjectNode named(Map<String, Double> values) {
        ObjectNode node = object();
        values.forEach(node::put);
        return node;
    }
}
