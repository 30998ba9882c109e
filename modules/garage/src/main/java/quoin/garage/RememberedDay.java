package quoin.garage;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;
import quoin.garage.desk.LastDay;

/** The last day in the settings of this program's user. */
final class RememberedDay implements LastDay {

    private static final String KEY = "last-day";

    private final Preferences settings = NbPreferences.forModule(RememberedDay.class);

    @Override
    public Optional<Path> get() {
        try {
            return Optional.ofNullable(settings.get(KEY, null)).map(Path::of);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    @Override
    public void set(Optional<Path> dayFolder) {
        if (dayFolder.isPresent()) {
            settings.put(KEY, dayFolder.get().toString());
        } else {
            settings.remove(KEY);
        }
    }
}
