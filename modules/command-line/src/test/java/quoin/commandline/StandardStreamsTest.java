package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class StandardStreamsTest {

    @Test
    void aLoneDashBelongsToTheWordBeforeIt() {
        String[] words = {"--nogui", "--calculate", "-", "--answers", "-"};
        StandardStreams.join(words);
        assertArrayEquals(new String[] {"--nogui", "--calculate=-", null, "--answers=-", null}, words);
    }

    @Test
    void everythingElseStays() {
        String[] words = {null, "-", "--calculate", "in.json", "--answers=-", "--open", "-", "-"};
        String[] kept = words.clone();
        StandardStreams.join(words);
        assertArrayEquals(kept, words);
    }
}
