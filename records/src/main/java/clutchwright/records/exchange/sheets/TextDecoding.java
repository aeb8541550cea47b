package clutchwright.records.exchange.sheets;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/// Finds how the letters of a text file are encoded.
///
/// A byte order mark decides; else text that is valid UTF-8 is UTF-8, since other encodings are
/// valid UTF-8 only by a rare accident; else it is the usual one of western Windows.
///
/// @param guessed the encoding, where the file neither says it nor is UTF-8
record TextDecoding(String text, Optional<String> guessed) {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /// @return empty if the bytes are no text
    static Optional<TextDecoding> of(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return strictly(bytes, 3, StandardCharsets.UTF_8)
                    .or(() -> lenient(bytes, 3, StandardCharsets.UTF_8))
                    .map(text -> new TextDecoding(text, Optional.empty()));
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return wide(bytes, 2, StandardCharsets.UTF_16LE, Optional.empty());
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return wide(bytes, 2, StandardCharsets.UTF_16BE, Optional.empty());
        }
        int probe = Math.min(bytes.length, 4096);
        int evenZeros = 0;
        int oddZeros = 0;
        for (int i = 0; i < probe; i++) {
            if (bytes[i] == 0) {
                if (i % 2 == 0) {
                    evenZeros++;
                } else {
                    oddZeros++;
                }
            }
        }
        // Western text in UTF-16 has a zero in nearly every second byte.
        if (oddZeros * 4 > probe && evenZeros * 40 < probe) {
            return wide(bytes, 0, StandardCharsets.UTF_16LE, Optional.of("UTF-16LE"));
        }
        if (evenZeros * 4 > probe && oddZeros * 40 < probe) {
            return wide(bytes, 0, StandardCharsets.UTF_16BE, Optional.of("UTF-16BE"));
        }
        if (evenZeros + oddZeros > 0 || controls(bytes, probe) * 50 > probe) {
            return Optional.empty();
        }
        return strictly(bytes, 0, StandardCharsets.UTF_8)
                .map(text -> new TextDecoding(text, Optional.empty()))
                .or(
                        () ->
                                lenient(bytes, 0, WINDOWS)
                                        .map(
                                                text ->
                                                        new TextDecoding(
                                                                text,
                                                                Optional.of("windows-1252"))));
    }

    private static Optional<TextDecoding> wide(
            byte[] bytes, int skip, Charset charset, Optional<String> guessed) {
        return lenient(bytes, skip, charset)
                .filter(text -> text.indexOf('\0') < 0)
                .map(text -> new TextDecoding(text, guessed));
    }

    private static int controls(byte[] bytes, int probe) {
        int found = 0;
        for (int i = 0; i < probe; i++) {
            if (bytes[i] >= 0
                    && bytes[i] < 0x20
                    && bytes[i] != '\t'
                    && bytes[i] != '\n'
                    && bytes[i] != '\r'
                    && bytes[i] != '\f') {
                found++;
            }
        }
        return found;
    }

    private static Optional<String> strictly(byte[] bytes, int skip, Charset charset) {
        try {
            return Optional.of(
                    charset.newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .onUnmappableCharacter(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes, skip, bytes.length - skip))
                            .toString());
        } catch (CharacterCodingException otherEncoding) {
            return Optional.empty();
        }
    }

    private static Optional<String> lenient(byte[] bytes, int skip, Charset charset) {
        return Optional.of(new String(bytes, skip, bytes.length - skip, charset));
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
