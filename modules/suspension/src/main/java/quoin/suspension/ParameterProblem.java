package quoin.suspension;

import quoin.quantities.Phrase;

/**
 * What is wrong with one parameter, for the person who typed it.
 *
 * @param key           the parameter
 * @param phrase        what is wrong and how to put it right, without a full stop
 * @param ofAnotherType true where the type asks for no such parameter: what was typed for another type stays with the car
 */
public record ParameterProblem(String key, Phrase phrase, boolean ofAnotherType) {

    /** A parameter of the type itself. */
    public ParameterProblem(String key, Phrase phrase) {
        this(key, phrase, false);
    }

    /** What is wrong, in the language of the program. */
    public String words() {
        return phrase.toString();
    }

    /** What is wrong, for an answer that must not depend on the language. */
    public String english() {
        return phrase.english();
    }
}
