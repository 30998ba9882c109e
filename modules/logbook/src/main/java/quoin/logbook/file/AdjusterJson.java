package quoin.logbook.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Setting;

/** One adjuster as a JSON object and back; it holds either a "thread" or "shims". */
final class AdjusterJson {

    private static final int MOST_STEPS = 1000;
    private static final int MOST_SHIMS = 100_000;

    private AdjusterJson() {
    }

    static void write(ObjectNode node, Adjuster adjuster) {
        node.put("id", adjuster.id().toString());
        if (adjuster.setting() instanceof Setting.Thread thread) {
            node.putObject("thread").put("pitchMm", thread.pitchMm()).put("bothEnds", thread.bothEnds())
                    .put("stepsPerTurn", thread.stepsPerTurn()).put("stepName", thread.stepName());
        } else if (adjuster.setting() instanceof Setting.Shims shims) {
            ObjectNode written = node.putObject("shims").put("fittedMm", shims.fittedMm());
            shims.stock().forEach(s -> written.withArray("stock").addObject().put("thicknessMm", s.thicknessMm())
                    .put("count", s.count()));
        }
        CarJson.put(node, "startMm", adjuster.startMm());
        CarJson.put(node, "minMm", adjuster.minMm());
        CarJson.put(node, "maxMm", adjuster.maxMm());
        node.put("locked", adjuster.locked());
    }

    static Adjuster read(Fields in) {
        return new Adjuster(in.parsed("id", AdjusterId::parse), readSetting(in), in.optionalNumber("startMm"),
                in.optionalNumber("minMm"), in.optionalNumber("maxMm"), in.flag("locked"));
    }

    private static Setting readSetting(Fields in) {
        Optional<Fields> thread = in.optionalObject("thread");
        if (thread.isPresent()) {
            Fields t = thread.get();
            return new Setting.Thread(t.number("pitchMm"), t.flag("bothEnds"), (int) t.whole("stepsPerTurn", 1, MOST_STEPS),
                    t.text("stepName"));
        }
        Fields shims = in.object("shims");
        return new Setting.Shims(shims.list("stock",
                s -> new Setting.Shim(s.number("thicknessMm"), (int) s.whole("count", 0, MOST_SHIMS))), shims.number("fittedMm"));
    }
}
