package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.Kills;

class DayKillTest {

    @TempDir
    Path folder;

    @Test
    void everythingShownAsRecordedIsThereAfterAKill() throws IOException, InterruptedException {
        Kills kills = new Kills(folder, RecordUntilKilled.class);
        kills.run(Kills.USUAL);
        assertTrue(kills.recorded() > Kills.USUAL, "it recorded too little to mean anything: " + kills.recorded());
    }
}
