package quoin.commandline;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import quoin.commandline.calculation.Calculation;
import quoin.commandline.calculation.Fields;
import quoin.commandline.calculation.RefusedException;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.NoEquilibriumException;

/** Answers a file of requests; JSON in, JSON out, no files and no platform. */
final class Calculator {
    private final Map<String, Calculation> calculations = new LinkedHashMap<>();

    Calculator(List<Calculation> calculations) {
        calculations.forEach(calculation -> this.calculations.put(calculation.name(), calculation));
    }

    /**
     * The answers in the order of the requests.
     *
     * @param answers the answer file
     * @param refused how many requests were refused
     */
    record Answers(ObjectNode answers, int refused) {
    }

    /** @throws RequestFormException if the file is not of the form {@code {"requests": [{"id": "..."}, ...]}} */
    Answers answer(JsonNode file) throws RequestFormException {
        if (file == null || !file.isObject() || !file.path("requests").isArray()) {
            throw new RequestFormException("the file must be an object with a list named requests");
        }
        if (file.size() != 1) {
            throw new RequestFormException("the file must have no field besides requests");
        }
        ObjectNode result = JsonNodeFactory.instance.objectNode();
        ArrayNode answers = result.putArray("answers");
        int refused = 0;
        int index = 0;
        for (JsonNode request : file.get("requests")) {
            if (!request.isObject() || !request.path("id").isTextual()) {
                throw new RequestFormException("requests[" + index + "] must be an object with a text named id");
            }
            ObjectNode answer = answers.addObject().put("id", request.get("id").asText());
            try {
                answer.set("result", calculate(request));
            } catch (RefusedException e) {
                answer.putObject("problem").put("field", e.field()).put("message", e.getMessage());
                refused++;
            }
            index++;
        }
        return new Answers(result, refused);
    }

    private ObjectNode calculate(JsonNode request) {
        request.fieldNames().forEachRemaining(name -> {
            if (!List.of("id", "calculation", "input").contains(name)) {
                throw new RefusedException(name, "is not a field of a request");
            }
        });
        Calculation calculation = calculations.get(request.path("calculation").asText());
        if (!request.path("calculation").isTextual() || calculation == null) {
            throw new RefusedException("calculation", "must be one of " + String.join(", ", calculations.keySet()));
        }
        try {
            Fields input = new Fields(request.get("input"));
            Supplier<ObjectNode> work = calculation.read(input);
            input.refuseUnknown();
            ObjectNode result = work.get();
            requireFinite(result);
            return result;
        } catch (InvalidInputException e) {
            throw new RefusedException(e.field(), e.getMessage());
        } catch (NoEquilibriumException e) {
            throw new RefusedException("car", e.getMessage());
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new RefusedException("input", "cannot be calculated: " + e.getMessage());
        } catch (RefusedException e) {
            throw e;
        } catch (RuntimeException e) {
            // Whatever a calculation trips over, the requests after it are answered all the same.
            throw new RefusedException("input", "cannot be calculated: " + e);
        }
    }

    private static void requireFinite(JsonNode node) {
        if (node.isNumber() && !Double.isFinite(node.asDouble())) {
            throw new RefusedException("input", "holds figures too large or too small to be calculated with");
        }
        node.forEach(Calculator::requireFinite);
    }
}
