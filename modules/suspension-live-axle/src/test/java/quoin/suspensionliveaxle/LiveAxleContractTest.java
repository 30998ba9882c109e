package quoin.suspensionliveaxle;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

/** The contract with each way of holding the axle sideways. */
class LiveAxleContractTest {

    private abstract static class Contract extends SuspensionTypeContract {
        private final Map<String, String> corner;

        Contract(Map<String, String> upper, Map<String, String> sideways) {
            corner = Axles.with(Axles.LOWER, Axles.with(upper, sideways));
        }

        @Override
        protected SuspensionType type() {
            return new LiveAxle();
        }

        @Override
        protected Map<String, String> typicalCorner() {
            return corner;
        }
    }

    @Nested
    class PanhardAndFourLinks extends Contract {
        PanhardAndFourLinks() {
            super(Axles.UPPER_PAIR, Axles.PANHARD);
        }
    }

    @Nested
    class PanhardAndOneUpperLink extends Contract {
        PanhardAndOneUpperLink() {
            super(Axles.TOP_LINK, Axles.PANHARD);
        }
    }

    @Nested
    class WattAndOneUpperLink extends Contract {
        WattAndOneUpperLink() {
            super(Axles.TOP_LINK, Axles.WATT);
        }
    }

    @Nested
    class ConvergingUpperLinks extends Contract {
        ConvergingUpperLinks() {
            super(Axles.CONVERGING, Map.of());
        }
    }
}
