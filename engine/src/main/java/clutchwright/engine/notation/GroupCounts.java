package clutchwright.engine.notation;

import clutchwright.engine.notation.Genes.Group;
import java.util.Optional;

/// Males, females and unsexed animals with points between: `1.0`, `0.1`, `1.2.3`.
final class GroupCounts {

    private static final int MOST_DIGITS = 4;

    private GroupCounts() {}

    static Optional<Group> of(String written) {
        var parts = written.split("[.,]", -1);
        var counts = new int[3];
        for (int i = 0; i < parts.length; i++) {
            if (parts[i].length() > MOST_DIGITS) {
                return Optional.empty();
            }
            counts[i] = Integer.parseInt(parts[i]);
        }
        boolean any = counts[0] + counts[1] + counts[2] > 0;
        return any ? Optional.of(new Group(counts[0], counts[1], counts[2])) : Optional.empty();
    }

    static String write(Group group) {
        var written = group.males() + "." + group.females();
        return group.unsexed() > 0 ? written + "." + group.unsexed() : written;
    }
}
