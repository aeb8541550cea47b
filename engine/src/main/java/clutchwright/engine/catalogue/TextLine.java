package clutchwright.engine.catalogue;

import java.util.List;

/// One line of a species file with the lines that stand under it.
///
/// @param number counted from 1
/// @param key the first word
/// @param value the rest of the line; may be empty
record TextLine(int number, String key, String value, List<TextLine> children) {

    TextLine {
        children = List.copyOf(children);
    }

    List<TextLine> all(String wanted) {
        return children.stream().filter(child -> child.key.equals(wanted)).toList();
    }
}
