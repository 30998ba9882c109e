package quoin.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.openide.util.NbBundle.Messages;

/**
 * What a shared file says is in it, {@code manifest.json}.
 *
 * @param car   id of the car at home
 * @param name  name of the car at home
 * @param from  whose it is
 * @param made  when it was put together, ISO 8601
 * @param files every file in it with its length and SHA-256
 */
@Messages({
    "manifest.unreadable=its list of contents cannot be read; ask for the file once more",
    "# {0} - what went wrong", "manifest.damaged=it cannot be read: {0}",
    "manifest.none=it is no shared car; choose a file made with File, Share Car",
    "# {0} - number", "manifest.newer=it was made by a newer Quoin (format {0}); update Quoin, then try again",
    "# {0} - path in the file", "manifest.elsewhere=it wants to write to ''{0}'', which no shared car does; it was not imported",
    "# {0} - path in the file", "manifest.tooLarge=''{0}'' is too large to be part of a car; it was not imported",
    "manifest.tooMuch=it holds more than a car with its days can; it was not imported",
    "manifest.noCar=there is no car in it; ask for the file once more"})
record Manifest(String car, String name, String from, String made, List<Item> files) {

    static final String FILE = "manifest.json";
    static final int FORMAT = 1;
    static final String CAR_FILE = "car.json";
    /** The only paths a shared file may hold: no other place can be written to. */
    private static final Pattern PATH = Pattern.compile("car\\.json|days/[a-z0-9][a-z0-9-]{0,63}/day\\.jsonl");
    private static final int MOST_FILES = 20_000;
    private static final long MOST_BYTES = 64L << 20;
    private static final long MOST_IN_ALL = 128L << 20;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** One file of it. */
    record Item(String path, long bytes, String sha256) {
    }

    Manifest {
        files = List.copyOf(files);
    }

    byte[] write() throws IOException {
        ObjectNode node = JSON.createObjectNode();
        node.put("quoin", "share").put("format", FORMAT).put("car", car).put("name", name).put("from", from).put("made", made);
        var list = node.putArray("files");
        files.forEach(f -> list.addObject().put("path", f.path()).put("bytes", f.bytes()).put("sha256", f.sha256()));
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(node);
    }

    /** @throws ShareException where it is no manifest, of a newer format, or names a path or size it must not */
    static Manifest read(byte[] bytes) {
        JsonNode node;
        try {
            node = JSON.readTree(bytes);
        } catch (JsonProcessingException e) {
            throw new ShareException(Bundle.manifest_unreadable(), e);
        } catch (IOException e) {
            throw new ShareException(Bundle.manifest_damaged(e.getLocalizedMessage()), e);
        }
        if (!node.path("quoin").asText().equals("share")) {
            throw new ShareException(Bundle.manifest_none());
        }
        if (node.path("format").asInt() > FORMAT) {
            throw new ShareException(Bundle.manifest_newer(node.path("format").asInt()));
        }
        List<Item> files = new ArrayList<>();
        node.path("files").forEach(f -> files.add(new Item(f.path("path").asText(), f.path("bytes").asLong(-1), f.path("sha256").asText())));
        check(files);
        return new Manifest(node.path("car").asText(), node.path("name").asText(), node.path("from").asText(), node.path("made").asText(), files);
    }

    private static void check(List<Item> files) {
        Set<String> seen = new HashSet<>();
        long all = 0;
        for (Item item : files) {
            if (!PATH.matcher(item.path()).matches() || !seen.add(item.path())) {
                throw new ShareException(Bundle.manifest_elsewhere(item.path()));
            }
            if (item.bytes() < 0 || item.bytes() > MOST_BYTES) {
                throw new ShareException(Bundle.manifest_tooLarge(item.path()));
            }
            all += item.bytes();
        }
        if (files.size() > MOST_FILES || all > MOST_IN_ALL) {
            throw new ShareException(Bundle.manifest_tooMuch());
        }
        if (!seen.contains(CAR_FILE)) {
            throw new ShareException(Bundle.manifest_noCar());
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
