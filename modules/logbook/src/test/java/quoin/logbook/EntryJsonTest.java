package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.logbook.file.Fields;
import quoin.logbook.file.StrictJson;

class EntryJsonTest {

    static java.util.List<Entry> everyKind() {
        return Samples.everyKind();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void everyEntryComesBackAsItWas(Entry entry) {
        byte[] line = StrictJson.line(EntryJson.write(entry));
        assertFalse(new String(line, StandardCharsets.UTF_8).contains("\n"), "an entry is one line");
        assertEquals(entry, read(new String(line, StandardCharsets.UTF_8)));
    }

    @Test
    void samplesCoverEveryKind() {
        Set<Class<?>> sampled = Samples.everyKind().stream().map(Object::getClass).collect(Collectors.toSet());
        Set<Class<?>> all = Arrays.stream(Entry.class.getPermittedSubclasses()).filter(c -> c != Entry.Unknown.class)
                .collect(Collectors.toSet());
        assertEquals(all, sampled);
    }

    @Test
    void unknownKindIsWrittenBackAsItStood() {
        String raw = "{\"kind\":\"tyre-temperature\",\"number\":4,\"time\":\"2026-03-07T12:00:00Z\",\"innerC\":[81.0,79]}";
        Entry entry = read(raw);
        assertEquals(new Entry.Unknown(new Header(4, java.time.Instant.parse("2026-03-07T12:00:00Z"), ""), "tyre-temperature", raw), entry);
        assertEquals(raw, new String(StrictJson.line(EntryJson.write(entry)), StandardCharsets.UTF_8));
    }

    @Test
    void fieldsOfNewerProgramsAreLetThrough() {
        assertEquals(new Entry.Note(Samples.header(2), "x"), read("{\"kind\":\"note\",\"number\":2,\"time\":\"" + Samples.NOON
                + "\",\"stage\":\"corner-weights\",\"words\":\"x\",\"mood\":{\"good\":true}}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'kind':'note' | words is missing",
        "'kind':'note','words':3 | words must be a text",
        "'kind':'reading','values':{'load.LF':'107.9'},'source':'racer' | values.load.LF must be a finite number",
        "'kind':'reading','values':{'load.LF':1e999},'source':'racer' | values.load.LF must be a finite number",
        "'kind':'reading','values':{'bogus.LF':1},'source':'racer' | 'bogus.LF' is not a reading",
        "'kind':'reading','values':{},'source':'robot' | source: 'robot' is none of",
        "'kind':'reading','source':'racer' | values is missing",
        "'kind':'reading','values':{'toe.LF':1},'source':'racer','measured':{'raw':{}} | measured.method is missing",
        "'kind':'reading','values':{},'source':'racer','measured':{'method':'x','raw':{'a':3}} | measured.raw.a must be a text",
        "'kind':'bump-steer','corner':'LF','points':[{'travelMm':1}] | points[0].toeInChangeDeg is missing",
        "'kind':'adjustment','turns':[{'adjuster':'perch.XX','amount':1}] | turns[0].adjuster: 'XX' is not a corner",
        "'kind':'adjustment','turns':[{'adjuster':'perch.LF'}] | turns[0].amount is missing",
        "'kind':'adjustment','turns':{} | turns must be a list",
        "'kind':'correction','corrects':1.5 | corrects must be a whole number",
        "'kind':'target','reading':'load.LF','value':1,'tolerance':0 | a tolerance must be greater than 0",
        "'kind':'goal','goal':'HALF' | goal: 'HALF' is none of",
        "'kind':'car','car':{} | car.axles is missing"})
    void wrongFieldsAreNamed(String body, String message) {
        String text = "{'number':2,'time':'2026-03-07T12:00:00Z'," + body + "}";
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> read(text.replace('\'', '"')));
        assertTrue(e.getMessage().contains(message), e.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"'number':0,'time':'2026-03-07T12:00:00Z'", "'number':9e15,'time':'2026-03-07T12:00:00Z'",
        "'number':99999999999999999999,'time':'2026-03-07T12:00:00Z'", "'number':1,'time':'yesterday'", "'time':'2026-03-07T12:00:00Z'"})
    void headersAreChecked(String header) {
        assertThrows(IllegalArgumentException.class, () -> read(("{" + header + ",'kind':'note','words':''}").replace('\'', '"')));
    }

    private static Entry read(String text) {
        return EntryJson.read(new Fields(StrictJson.read(text.getBytes(StandardCharsets.UTF_8))), text);
    }
}
