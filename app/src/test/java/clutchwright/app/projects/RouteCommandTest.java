package clutchwright.app.projects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Routes over generations as another program asks for them, and as a person does.
class RouteCommandTest {

    private static final String TWO_VISUALS =
            """
            tag,sex,hatched,shows,status
            F1,female,2019,Clown,kept
            M1,male,2018,Piebald,kept
            Sold,male,2018,Clown Piebald,sold
            """;

    @TempDir Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void two_visuals_meet_by_double_hets_that_are_bred_again() throws IOException {
        var found =
                json(
                        TWO_VISUALS,
                        "--goal",
                        "Clown Piebald",
                        "--clutches-per-season",
                        "1",
                        "--hatch-rate",
                        "1",
                        "--male-seasons",
                        "1",
                        "--female-seasons",
                        "1",
                        "--max-seasons",
                        "8");

        assertThat(found.path("method").asString()).isEqualTo("exhaustive");
        assertThat(found.path("refused").isNull()).isTrue();
        assertThat(found.path("runs").asInt()).isGreaterThanOrEqualTo(10_000);
        assertThat(found.path("runsPerSecond").asInt()).isPositive();
        var route = found.path("routes").get(0);
        // 31/32 (1 - (15/16)^6), four and a half standard errors
        assertThat(route.path("chanceBySeason").get(1).path("chance").asDouble())
                .isEqualTo(0.311032536, within(0.015));
        assertThat(route.path("chanceBySeason")).hasSize(8);
        assertThat(route.path("chanceBySeason").get(7).path("season").asInt()).isEqualTo(8);
        var first = route.path("steps").get(0);
        assertThat(first.path("season").asInt()).isEqualTo(1);
        assertThat(first.path("dam").asString()).isEqualTo("F1");
        assertThat(first.path("sire").asString()).isEqualTo("M1");
        assertThat(first.path("clutches").asInt()).isEqualTo(1);
        assertThat(first.path("chance").asDouble()).isEqualTo(31.0 / 32, within(1e-12));
        assertThat(first.path("inbreeding").asDouble()).isZero();
        var kept = first.path("keep").get(0);
        assertThat(kept.path("visible")).isEmpty();
        assertThat(kept.path("perHatchling").path("fraction").asString()).isEqualTo("1/2");
        assertThat(kept.path("carries").get(0).path("chance").asDouble()).isEqualTo(1);
        assertThat(first.path("keep"))
                .extracting(keep -> keep.path("sex").asString())
                .containsExactlyInAnyOrder("female", "male");
        var last = route.path("steps").get(1);
        assertThat(last.path("season").asInt()).isEqualTo(2);
        assertThat(List.of(last.path("dam").asString(), last.path("sire").asString()))
                .containsExactlyInAnyOrder("K1", "K2");
        assertThat(last.path("inbreeding").asDouble()).isEqualTo(0.25, within(1e-12));
        var goal = last.path("keep").get(0);
        assertThat(goal.path("goal").asBoolean()).isTrue();
        assertThat(goal.path("sex").asString()).isEqualTo("any");
        assertThat(goal.path("perHatchling").path("fraction").asString()).isEqualTo("1/16");
        assertThat(goal.path("visible"))
                .extracting(JsonNode::asString)
                .containsExactly("Clown", "Piebald");
    }

    @Test
    void alleles_that_look_alike_will_do_for_one_another() throws IOException {
        // Who looks Albino may hold either of two lines of it.
        var found =
                json("tag,sex,shows\nF1,female,Albino\nM1,male,Clown\n", "--goal", "Albino Clown");

        var steps = found.path("routes").get(0).path("steps");
        assertThat(steps.get(0).path("keep").get(0).path("carries"))
                .extracting(held -> held.path("allele").asString())
                .containsExactlyInAnyOrder("Albino", "Clown");
        assertThat(steps.get(0).path("keep").get(0).path("carries"))
                .allMatch(held -> held.path("chance").asDouble() == 1);
        var goal = steps.get(1).path("keep").get(0);
        assertThat(goal.path("perHatchling").path("fraction").asString()).isEqualTo("1/16");
        assertThat(goal.path("carries")).isEmpty();
    }

    @Test
    void males_grow_in_two_seasons_and_females_in_three() throws IOException {
        var found = json(TWO_VISUALS, "--goal", "Clown Piebald");

        for (var route : found.path("routes")) {
            assertThat(route.path("steps").get(1).path("season").asInt()).isEqualTo(4);
            assertThat(route.path("chanceBySeason").get(2).path("chance").asDouble()).isZero();
            assertThat(route.path("chance").asDouble()).isGreaterThanOrEqualTo(0.9);
        }
    }

    @Test
    void who_is_too_young_waits_and_who_has_no_sex_is_left_out() throws IOException {
        var found =
                json(
                        """
                        tag,sex,hatched,shows,status
                        F1,female,2025,Clown,kept
                        M1,male,2018,Clown Piebald,kept
                        U1,,2018,Clown Piebald,kept
                        """,
                        "--goal",
                        "2.1 Clown",
                        "--first-season",
                        "2026");

        assertThat(found.path("routes").get(0).path("steps").get(0).path("season").asInt())
                .isEqualTo(3);
        assertThat(found.path("notes"))
                .extracting(JsonNode::asString)
                .containsExactly(
                        "note: F1 is too young before season 3.",
                        "note: U1 is not sexed and is left out.");
    }

    @Test
    void close_relatives_alone_are_said_to_be_so() throws IOException {
        var found =
                json(
                        """
                        tag,sex,hatched,dam,sire,shows,status
                        F0,female,2015,,,Clown,dead
                        M0,male,2015,,,Normal,dead
                        F1,female,2019,F0,M0,Normal,kept
                        M1,male,2019,F0,M0,Normal,kept
                        """,
                        "--goal",
                        "Clown");

        assertThat(found.path("routes").get(0).path("steps").get(0).path("inbreeding").asDouble())
                .isEqualTo(0.25, within(1e-12));
        assertThat(found.path("notes").get(0).asString()).contains("close relatives");
    }

    @Test
    void a_goal_that_no_route_leads_to_is_refused_with_its_reason() throws IOException {
        assertThat(refused("Clown Pastel")).isEqualTo("nobody carries");
        assertThat(refused("het Clown")).isEqualTo("already owned");
        assertThat(text(err)).contains("It is there already: F1.");
        assertThat(refused("Super Mojave Lesser")).isEqualTo("three alleles");
        assertThat(refused("Clown Piebald", "--clutches-per-season", "0")).isEqualTo("no clutches");
        assertThat(refused("Clown Piebald", "--max-seasons", "2")).isEqualTo("out of reach");
        assertThat(refused("Clown Piebald", "--first-season", "2000")).isEqualTo("all too young");
    }

    @Test
    void without_a_female_or_a_male_nothing_hatches() throws IOException {
        var female = "tag,sex,shows\nF1,female,Clown\nF2,female,Piebald\n";

        assertThat(run(female, "--goal", "Clown Piebald", "--json")).isEqualTo(1);
        assertThat(
                        JsonMapper.shared()
                                .readTree(text(out))
                                .path("refused")
                                .path("reason")
                                .asString())
                .isEqualTo("no male");
    }

    private String refused(String goal, String... more) throws IOException {
        var arguments = new ArrayList<>(List.of("--goal", goal, "--json"));
        arguments.addAll(List.of(more));
        out.reset();
        err.reset();
        assertThat(run(TWO_VISUALS, arguments.toArray(String[]::new))).isEqualTo(1);
        var document = JsonMapper.shared().readTree(text(out));
        assertThat(document.path("routes")).isEmpty();
        assertThat(text(err)).contains("--goal");
        return document.path("refused").path("reason").asString();
    }

    @Test
    void bad_input_is_named_where_it_stands_and_prints_nothing() throws IOException {
        assertThat(run(TWO_VISUALS, "--goal", "Clwon Piebald")).isEqualTo(2);
        assertThat(text(err)).contains("--goal, character 1", "Clown");
        assertThat(run(TWO_VISUALS, "--goal", "Normal")).isEqualTo(2);
        assertThat(run(TWO_VISUALS, "--goal", "50% het Clown")).isEqualTo(2);
        assertThat(run(TWO_VISUALS, "--goal", "Clown", "--eggs", "0", "--hatch-rate", "0"))
                .isEqualTo(2);
        assertThat(text(err))
                .contains("--eggs: write a number from 1", "--hatch-rate: write a number above 0");
        assertThat(run(TWO_VISUALS, "--goal", "Clown", "--confidence", "NaN")).isEqualTo(2);
        assertThat(text(out)).isEmpty();
    }

    @Test
    void a_person_reads_what_to_pair_and_what_to_keep() throws IOException {
        assertThat(run(TWO_VISUALS, "--goal", "Clown Piebald", "--clutches-per-season", "1"))
                .isZero();

        assertThat(text(out))
                .contains(
                        "Route 1 to Clown Piebald:",
                        "season 1: F1 x M1, 1 clutch",
                        "a female Normal, 1/2 of the hatchlings; het Clown 100 %, Piebald 100 %",
                        "a Clown Piebald, 1/16 of the hatchlings",
                        "young inbred at 0.250",
                        "After each season put what hatched on record and run this again");
    }

    private JsonNode json(String animals, String... arguments) throws IOException {
        var more = new ArrayList<>(List.of(arguments));
        more.add("--json");
        out.reset();
        assertThat(run(animals, more.toArray(String[]::new))).as(text(err)).isZero();
        return JsonMapper.shared().readTree(text(out));
    }

    private int run(String animals, String... arguments) throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, animals);
        var all = new ArrayList<>(List.of("route", file.toString()));
        all.addAll(List.of(arguments));
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)),
                all.toArray(String[]::new));
    }

    private static String text(ByteArrayOutputStream stream) {
        return stream.toString(StandardCharsets.UTF_8);
    }
}
