package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalKillTest {

    @TempDir
    Path folder;

    @Test
    void everythingSaidToBeRecordedIsThereAfterAKillInsideAWrite() throws IOException, InterruptedException {
        Kills kills = new Kills(folder, ScriptedDay.class);
        kills.run(Kills.USUAL);
        assertTrue(kills.recorded() > Kills.USUAL, "it recorded too little to mean anything: " + kills.recorded());
        assertTrue(kills.torn() > Kills.USUAL / 10, "hardly a kill fell inside a write: " + kills.torn());
    }
}
