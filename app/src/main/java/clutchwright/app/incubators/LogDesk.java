package clutchwright.app.incubators;

import clutchwright.app.loggers.LogSheet;
import clutchwright.records.incubators.SensorId;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.Optional;

/// Loggers' files whose columns are being asked about. A few at a time: an old one makes place for
/// a new one.
final class LogDesk {

    private static final int MOST = 4;

    private final SecureRandom random = new SecureRandom();
    private final Deque<InHand> files = new ArrayDeque<>();

    /// @param mark by which it is found again
    record InHand(String mark, SensorId sensor, String name, LogSheet sheet) {}

    synchronized InHand take(SensorId sensor, String name, LogSheet sheet) {
        var mark = new byte[16];
        random.nextBytes(mark);
        var held = new InHand(HexFormat.of().formatHex(mark), sensor, name, sheet);
        files.addLast(held);
        if (files.size() > MOST) {
            files.removeFirst();
        }
        return held;
    }

    synchronized Optional<InHand> find(String mark, SensorId sensor) {
        return files.stream()
                .filter(held -> held.mark().equals(mark) && held.sensor().equals(sensor))
                .findFirst();
    }

    synchronized void putAway(InHand held) {
        files.remove(held);
    }
}
