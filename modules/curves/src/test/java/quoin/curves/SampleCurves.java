package quoin.curves;

import java.util.Optional;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.Setting;
import quoin.curves.set.AxleGeometry;
import quoin.curves.set.CurveRequest;
import quoin.curves.set.CurveSet;
import quoin.curves.set.Sweep;
import quoin.curves.set.Turned;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.spi.SuspensionTypes;

/** The example axle with a camber rod turned. */
public final class SampleCurves {

    private SampleCurves() {
    }

    public static AxleGeometry axle() {
        return AxleGeometry.of(ExampleAxle.in(Ouzel23.car(), Axle.FRONT), Axle.FRONT, SuspensionTypes.installed());
    }

    /** @param turns of the left camber rod */
    public static CurveSet turned(AxleGeometry axle, double turns) {
        AdjusterId id = new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF);
        return CurveSet.of(axle, new CurveRequest(Sweep.TRAVEL, 40, Optional.of(new Turned(id, turns))),
                Optional.of(Adjuster.unmeasured(id, new Setting.Thread(1.5, false, 6, "flat"))));
    }
}
