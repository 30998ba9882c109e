package quoin.suspension;

import quoin.quantities.Phrase;

/**
 * What is wrong with one parameter, for the person who typed it.
 *
 * @param key    the parameter
 * @param phrase what is wrong and how to put it right, without a full stop
 */
public record ParameterProblem(String key, Phrase phrase) {

    /** What is wrong, in the language of the program. */
    public String words() {
        return phrase.toString();
    }

    /** What is wrong, for an answer that must not depend on the language. */
    public String english() {
        return phrase.english();
    }
}
