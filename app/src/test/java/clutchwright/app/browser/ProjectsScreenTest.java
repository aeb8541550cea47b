package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import clutchwright.app.holding.Holding;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Projects in a house of their own: from the empty page to routes, and what they say.
class ProjectsScreenTest extends Browsing {

    @TempDir Path folder;
    private Serving.Running house;

    @BeforeEach
    void a_house_opens() {
        var plan =
                new Serving.Plan(
                        new DataFolder(folder),
                        false,
                        0,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of());
        house =
                switch (Serving.start(plan)) {
                    case Serving.Running running -> running;
                    case Serving.Refused(var why) -> throw new IllegalStateException(why);
                };
    }

    @AfterEach
    void it_closes() {
        house.close();
    }

    @Test
    void an_empty_page_teaches_and_a_faulty_form_names_every_fault() {
        visit("/projects");
        assertThat(page().locator(".empty")).containsText("takes more than one generation");
        inspect("projects-empty");
        visit("/projects/new");
        page().getByLabel("Goal").fill("Clown Zzyzx");
        page().getByLabel("Clutches a season").fill("-1");
        page().getByLabel("Animals that could be bought").fill("Clown 250");
        button("Save").click();
        assertThat(page().locator(".field.faulty")).hasCount(4);
        assertThat(page().locator("main")).containsText("Line 1: write 1.0 or 0.1");
        inspect("projects-faulty");
    }

    @Test
    void a_double_visual_is_planned_looked_for_changed_and_removed() {
        var stock = new Stock(house.context().getBean(Holding.class));
        stock.female("F-1", "Clown");
        stock.male("M-1", "Piebald");
        begin("Two in one", "Clown Piebald");
        assertThat(page().locator("main")).containsText("Nobody has looked for routes yet.");
        inspect("project-new");

        look();
        var steps = page().locator(".steps > li");
        assertThat(steps.first()).containsText("F-1");
        assertThat(steps.first()).containsText("M-1");
        // Every hatchling of two visuals is a double het, half of them of each sex.
        assertThat(steps.first()).containsText("1/2, that is 50 % of the hatchlings");
        assertThat(page().locator(".keep.goal").last()).containsText("Clown Piebald");
        assertThat(page().locator("svg.route .route-step").first()).isVisible();
        steps.first().getByText("Why?").click();
        assertThat(steps.first()).containsText("worked out exactly");
        inspect("project");

        visit("/projects");
        assertThat(page().locator(".projects")).containsText("clutches on average");
        inspect("projects");

        visit("/projects/1/edit");
        page().getByLabel("By a laboratory’s test").check();
        page().getByLabel("Price of one test").fill("45");
        page().getByLabel("Animals that could be bought").fill("1.0 Clown het Piebald: 900");
        inspect("project-edit");
        button("Save").click();
        look();
        assertThat(page().locator("main")).containsText("Every hatchling is tested");
        page().locator(".routes a").filter(having("buys for 900")).first().click();
        assertThat(page().locator("main")).containsText("a Clown het Piebald male to buy");
        inspect("project-bought");

        visit("/projects/1/edit");
        button("Remove this project").click();
        assertThat(page().locator(".empty")).isVisible();
        button("Undo").click();
        visit("/projects");
        assertThat(page().locator(".projects")).containsText("Two in one");
    }

    @Test
    void a_goal_that_cannot_be_says_why() {
        var stock = new Stock(house.context().getBean(Holding.class));
        stock.female("F-1", "Clown");
        begin("Without a male", "Clown Piebald");
        button("Look for routes").click();
        assertThat(page().locator(".empty")).containsText("No route.");
        inspect("project-refused");
    }

    @Test
    void a_step_of_a_project_counts_in_the_seasons_plan() {
        var stock = new Stock(house.context().getBean(Holding.class));
        stock.female("F-1", "Clown");
        stock.male("M-1", "Piebald");
        stock.male("M-2", "Pastel");
        begin("Two in one", "Clown Piebald");
        visit("/season/plan");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Work it out"))
                .click();
        assertThat(page().locator(".by-female > li").first()).containsText("M-1");
        assertThat(page().locator(".by-female > li").first()).containsText("step of Two in one");
        assertThat(
                        page().locator("section", new Page.LocatorOptions().setHasText("Projects"))
                                .last())
                .containsText("from F-1 × M-1");
    }

    private void begin(String name, String goal) {
        visit("/projects/new");
        page().getByLabel("Name").fill(name);
        page().getByLabel("Goal").fill(goal);
        page().getByLabel("Worth of a clutch that is a step").fill("100");
        button("Save").click();
        assertThat(page().locator(".flash")).containsText("is saved");
    }

    private void look() {
        page().locator(".head button.main").click();
        assertThat(page().locator(".steps > li").first()).isVisible();
    }

    private void visit(String path) {
        page().navigate(house.address() + path.substring(1));
    }

    private Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator.FilterOptions having(String text) {
        return new Locator.FilterOptions().setHasText(text);
    }
}
