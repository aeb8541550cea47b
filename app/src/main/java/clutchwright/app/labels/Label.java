package clutchwright.app.labels;

import java.util.List;

/// What stands on one label.
///
/// @param address what its QR code says
/// @param head in the largest type
/// @param second in large type; may be blank
/// @param lines in small type, the most important first
record Label(String address, String head, String second, List<String> lines) {

    Label {
        lines = lines.stream().filter(line -> !line.isBlank()).toList();
    }
}
