package clutchwright.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;

/// The files that pages load, each addressed with a mark of its content so that browsers may keep
/// it for good.
public record Assets(Map<String, String> marks) {

    private static final String FOLDER = "/static/";

    public Assets {
        marks = Map.copyOf(marks);
    }

    static Assets read(String... names) {
        var marks = new TreeMap<String, String>();
        for (var name : names) {
            marks.put(name, markOf(name));
        }
        return new Assets(marks);
    }

    /// @throws IllegalArgumentException if no such file is served
    public String path(String name) {
        var mark = marks.get(name);
        if (mark == null) {
            throw new IllegalArgumentException("no such asset: " + name);
        }
        return "/" + name + "?v=" + mark;
    }

    private static String markOf(String name) {
        try (var in = Assets.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the build: " + FOLDER + name);
            }
            var sum = new CRC32();
            sum.update(in.readAllBytes());
            return Long.toHexString(sum.getValue());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
