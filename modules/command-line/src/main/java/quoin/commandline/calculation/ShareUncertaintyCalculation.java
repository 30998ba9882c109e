package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.car.PerCorner;
import quoin.mechanics.ScaleErrors;
import quoin.mechanics.ShareUncertainty;

/** Front, left and cross share with standard and expanded uncertainty. */
final class ShareUncertaintyCalculation implements Calculation {
    @Override
    public String name() {
        return "share-uncertainty";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        PerCorner<Double> loads = in.perCorner("cornerLoads_kgf");
        ScaleErrors errors = new ScaleErrors(in.number("scaleResolution_kg"), in.number("repeatabilitySd_kg"),
                in.number("calibrationRelativeSd"), in.wholeNumber("readingsAveraged"));
        return () -> {
            ShareUncertainty result = ShareUncertainty.of(loads, errors);
            ObjectNode node = Results.object();
            node.set("front", share(result.front()));
            node.set("left", share(result.left()));
            node.set("cross", share(result.cross()));
            return node;
        };
    }

    private static ObjectNode share(ShareUncertainty.Share share) {
        return Results.object().put("share_percent", share.sharePercent())
                .put("standardUncertainty_percent", share.standardPercent())
                .put("expandedUncertainty_k2_percent", share.expandedPercent());
    }
}
