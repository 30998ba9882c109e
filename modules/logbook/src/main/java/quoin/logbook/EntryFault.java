package quoin.logbook;

import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/** Refusals of what no entry can hold. */
final class EntryFault {

    private static final Texts TEXTS = Texts.of(EntryFault.class);

    private EntryFault() {
    }

    static NotTakenException of(String key, Object... arguments) {
        return new NotTakenException(TEXTS.phrase(key, arguments));
    }
}
