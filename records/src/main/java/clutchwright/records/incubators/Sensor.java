package clutchwright.records.incubators;

import clutchwright.records.clutches.BoxId;
import java.time.Duration;
import java.util.Optional;

/// A sensor of temperature.
///
/// @param box among whose eggs it is; empty where it hangs in the incubator's air
/// @param source where its live readings come from
/// @param correctionKelvin what is added to what it says, found by comparing it with a better one
/// @param silentAfter without a reading for so long, it is called silent
public record Sensor(
        SensorId id,
        long version,
        String name,
        IncubatorId incubator,
        Optional<BoxId> box,
        Source source,
        Scale scale,
        double correctionKelvin,
        Duration silentAfter) {

    /// What a sensor counts its degrees in.
    public enum Scale {
        CELSIUS,
        FAHRENHEIT
    }

    /// @param topic under which it sends by MQTT; blank where it does not
    /// @param member the member of its JSON messages that holds the temperature; blank where a
    ///     message is the number alone
    public record Source(String topic, String member) {

        public static final Source NONE = new Source("", "");

        public boolean isLive() {
            return !topic.isBlank();
        }
    }

    /// What a reading means, in °C.
    public double celsius(double said) {
        return (scale == Scale.CELSIUS ? said : (said - 32) / 1.8) + correctionKelvin;
    }
}
