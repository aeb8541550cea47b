package clutchwright.app.projects;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RouteTreeTest {

    private static RouteTree.Node step(
            String anchor, int year, RouteTree.Parent dam, RouteTree.Parent sire, int keeps) {
        return new RouteTree.Node(
                anchor,
                year,
                dam,
                sire,
                List.of(
                        new RouteTree.Kept(
                                keeps,
                                "K" + keeps,
                                Optional.of(Sex.FEMALE),
                                false,
                                Optional.empty())));
    }

    private static RouteTree.Parent own(String tag) {
        return new RouteTree.Parent(tag, Optional.empty());
    }

    private static RouteTree.Parent kept(int number) {
        return new RouteTree.Parent("K" + number, Optional.of(number));
    }

    @Test
    void a_year_is_a_column_and_its_steps_stand_under_one_another_and_are_bound_to_what_follows() {
        var first = step("step-1", 2027, own("F-1"), own("M-1"), 1);
        var second = step("step-2", 2027, own("F-2"), own("<M-2>"), 2);
        var last = step("step-3", 2031, kept(1), kept(2), 3);

        var tree = new RouteTree(List.of(first, second, last));

        assertThat(List.of(tree.column(0), tree.column(1), tree.column(2)))
                .containsExactly(0, 0, 1);
        assertThat(tree.top(1)).isGreaterThanOrEqualTo(tree.top(0) + first.height());
        // One step stands in the middle beside two.
        assertThat(tree.top(2) + last.height() / 2)
                .isEqualTo((tree.top(0) + tree.top(1) + second.height()) / 2);
        var drawn = tree.draw("a route").toString();
        assertThat(drawn.split("class=\"route-link\"", -1)).hasSize(3);
        assertThat(drawn).contains("href=\"#step-3\"", "&lt;M-2&gt;", ">2027<", ">2031<");
    }
}
