package quoin.suspension;

/**
 * What is wrong with one parameter, for the person who typed it.
 *
 * @param key   the parameter
 * @param words what is wrong and how to put it right, without a full stop
 */
public record ParameterProblem(String key, String words) {
}
